import type Fraction from 'fraction.js'
import { listOf } from '../../length/finding.ts'
import { formatNumber } from '../../length/format.ts'
import { amount, type Section, words } from '../listing.ts'
import type { ClassKit } from './class-kit.ts'
import { gramsText } from './grams-text.ts'

/** What there is to carry: nothing where no weight of paper is known. */
export function weightSection({ weight, unit, lessons }: ClassKit): Section[] {
  const { stocks, perKit, unknown } = weight
  if (stocks.length === 0) return []
  const say = (grams: Fraction): string => gramsText(grams, unit)
  const sum = (of: 'pieces' | 'sheets'): string =>
    say(stocks.map((one) => one[of]).reduce((a, b) => a.add(b)))
  const each = perKit.map(({ lesson, grams }) =>
    lessons.length > 1 ? `${say(grams)} in each kit of “${lesson}”` : `${say(grams)} in each kit`,
  )
  return [
    {
      heading: 'What the paper weighs',
      columns: [words('stock'), amount('gsm'), amount('in the kits'), amount('as whole sheets')],
      rows: [
        ...stocks.map(({ stock, gsm, pieces, sheets }) => [
          stock,
          formatNumber(gsm.round(1), 'mm'),
          gramsText(pieces, 'mm'),
          sheets.equals(0) ? '' : gramsText(sheets, 'mm'),
        ]),
        ['in all', '', sum('pieces'), sum('sheets')],
      ],
      note: `${listOf(each)}.${
        unknown.length > 0 ? ` Not weighed: ${listOf(unknown)}, of which nobody says the weight.` : ''
      }`,
    },
  ]
}
