import { attempt, fieldsOf, type Reading, report, wordOf } from '../../card/reading.ts'
import { gramsPerSquareMetre } from '../../card/weight.ts'
import type { Entry, Fields } from '../../card/yaml.ts'
import type { Place } from '../../length/finding.ts'
import { mm, type Size } from '../../length/length.ts'
import { readSize } from '../../length/text.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import { checkSaleKeys, countIn, moneyIn } from './amounts.ts'
import type { SheetOffer } from './class-file.ts'
import { trimIn } from './read-trim.ts'

const keys = [
  'size',
  'weight',
  'price',
  'have',
  'limit',
  'pack',
  'grain',
  'direction',
  'trim',
  'offcuts',
] as const
const example = 'Write for example `dark blue card: {size: 12 x 12 in, price: 0.60}`'

/** The sheets that are to be had, by stock: one size each, or a list of sizes. */
export function sheetsIn(reading: Reading, entry: Entry | undefined): Map<string, SheetOffer[]> {
  const sheets = new Map<string, SheetOffer[]>()
  for (const { key, value } of fieldsOf(
    reading,
    entry,
    '`sheets` wants stocks with their sizes',
    example,
  ).values()) {
    const offers = (value.kind === 'list' ? value.items : [value]).flatMap((item) => offersOf(reading, item))
    if (offers.length > 0) sheets.set(key, offers)
  }
  return sheets
}

/** One size of sheet, with the offcuts that lie by it. A size alone needs no braces. */
function offersOf(reading: Reading, entry: Entry): SheetOffer[] {
  if (entry.kind === 'text') {
    const size = sizeIn(reading, entry)
    return size ? [{ size, place: entry.place, ...plain }] : []
  }
  const fields = fieldsOf(reading, entry, 'A sheet wants its size', example)
  checkSaleKeys(reading, fields, keys, 'a sheet')
  const size = sizeIn(reading, fields.get('size')?.value)
  const offcuts = offcutsOf(reading, fields)
  if (!size) {
    if (offcuts.length === 0 && !fields.has('size'))
      report(reading, 'missing-key', entry.place, 'This sheet has no size', example)
    return offcuts
  }
  const trim = trimIn(reading, fields.get('trim'), size)
  if (!trim) return offcuts
  const price = moneyIn(reading, fields.get('price')?.value)
  const weight = weightIn(reading, fields.get('weight')?.value)
  const limit = countIn(reading, fields.get('limit')?.value, 'limit', 0)
  const has = (key: (typeof keys)[number]): boolean => fields.has(key)
  return [
    ...offcuts,
    {
      size,
      place: fields.get('size')?.keyPlace ?? entry.place,
      ...(weight && { weight }),
      ...(price !== undefined && { price }),
      have: countIn(reading, fields.get('have')?.value, 'have', 0) ?? 0,
      ...(limit !== undefined && { limit }),
      pack: countIn(reading, fields.get('pack')?.value, 'pack', 1) ?? 1,
      ...(has('grain') && {
        grain: wordOf(reading, fields.get('grain')?.value, ['long', 'short', 'width', 'height']),
      }),
      ...(has('direction') && { direction: wordOf(reading, fields.get('direction')?.value, ['upright']) }),
      ...(Object.keys(trim).length > 0 && { trim }),
      offcut: false,
    },
  ]
}

const plain = { have: 0, pack: 1, offcut: false } as const

function weightIn(reading: Reading, entry: Entry | undefined): SheetOffer['weight'] {
  const cure = 'Write `weight: 300 gsm` or `weight: 110 lb cover`'
  const [text] = textsOf(reading, entry, '`weight` wants what the sheet weighs', cure)
  const weight = text && attempt(reading, text, gramsPerSquareMetre)
  if (!text || !weight || weight.gt(0)) return weight
  report(reading, 'value', text.place, 'A sheet weighs more than nothing', cure)
  return undefined
}

function sizeIn(reading: Reading, entry: Entry | undefined): Size | undefined {
  const [text] = textsOf(reading, entry, 'A size is wanted here', example)
  const size = text && attempt(reading, text, readSize)
  return text && size && checkedSize(reading, size, text.place)
}

/** Paper on a roll is no longer: whoever writes more has slipped. */
const longest = mm(20_000)

function checkedSize(reading: Reading, size: Size, place: Place): Size | undefined {
  const sides = [size.width, size.height]
  if (sides.every((side) => side.gt(0) && side.lte(longest))) return size
  const why = sides.every((side) => side.gt(0)) ? 'No sheet is so large' : 'A sheet is larger than nothing'
  report(reading, 'value', place, why, example)
  return undefined
}

/** `offcuts: [5 x 7 in, 2 of 4 x 6 in]`: they lie there already, and are used before anything is bought. */
function offcutsOf(reading: Reading, fields: Fields): SheetOffer[] {
  const cure = 'Write their sizes, such as `offcuts: [5 x 7 in, 2 of 4 x 6 in]`'
  return textsOf(reading, fields.get('offcuts')?.value, 'A size is wanted here', cure).flatMap((item) => {
    const [, count = '1', rest = item.text] = /^\s*(\d{1,4})\s+of\s+(.*)$/s.exec(item.text) ?? []
    const size = attempt(reading, { ...item, text: rest, plain: item.plain && rest === item.text }, readSize)
    if (!size || !checkedSize(reading, size, item.place)) return []
    const have = Number(count)
    return [{ ...plain, size, place: item.place, have, limit: have, offcut: true }]
  })
}
