import type Fraction from 'fraction.js'
import { amount, type Section, words } from '../listing.ts'
import type { ClassKit } from './class-kit.ts'
import { gramsText } from './grams-text.ts'

/** What there is to carry: nothing where no weight of paper is known. */
export function weightSection({ weight, wording, lessons }: ClassKit): Section[] {
  const { stocks, perKit, unknown } = weight
  const { say, name, list } = wording
  if (stocks.length === 0) return []
  const metric = wording.in('mm')
  const sum = (of: 'pieces' | 'sheets'): string =>
    gramsText(
      stocks.map((one) => one[of]).reduce((a: Fraction, b) => a.add(b)),
      wording,
    )
  const each = perKit.map(({ lesson, grams }) => {
    const weighs = gramsText(grams, wording)
    return lessons.length > 1
      ? say('class.weight-in-each-of', { weight: weighs, lesson })
      : say('class.weight-in-each', { weight: weighs })
  })
  return [
    {
      heading: say('class.what-paper-weighs'),
      columns: [
        words(say('kit.stock')),
        amount(say('class.gsm')),
        amount(say('class.in-the-kits')),
        amount(say('class.as-whole-sheets')),
      ],
      rows: [
        ...stocks.map(({ stock, gsm, pieces, sheets }) => [
          name(stock),
          metric.number(gsm.round(1)),
          gramsText(pieces, metric),
          sheets.equals(0) ? '' : gramsText(sheets, metric),
        ]),
        [say('kit.in-all'), '', sum('pieces'), sum('sheets')],
      ],
      note: [
        `${list(each)}.`,
        ...(unknown.length > 0 ? [say('class.not-weighed', { stocks: list(unknown.map(name)) })] : []),
      ].join(' '),
    },
  ]
}
