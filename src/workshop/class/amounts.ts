import Fraction from 'fraction.js'
import { attempt, checkKeys, type Reading, report } from '../../card/reading.ts'
import type { Entry, Fields } from '../../card/yaml.ts'
import { evaluateLength } from '../../length/evaluate.ts'
import { type Length, mm } from '../../length/length.ts'
import { parseMeasure } from '../../length/parse.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import type { Money } from './money.ts'

/** More people than this are no class, and nobody could print their labels. */
export const mostPeople = 2000

/** A whole number from `least` up to `most`; otherwise a finding, and undefined. */
export function countIn(
  reading: Reading,
  entry: Entry | undefined,
  what: string,
  least: 0 | 1,
  most = 999_999,
): number | undefined {
  const cure = `Write a whole number${least > 0 ? ' from 1 up' : ''}, such as \`${what}: 12\``
  const [item] = textsOf(reading, entry, `\`${what}\` wants a number`, cure)
  if (!item) return undefined
  const text = item.text.trim()
  const whole = /^\d+$/.test(text)
  if (whole && Number(text) >= least && Number(text) <= most) return Number(text)
  if (whole && Number(text) > most)
    report(reading, 'too-many', item.place, `\`${what}\` can be ${most} at most`, cure)
  else report(reading, 'value', item.place, `\`${text}\` is no number of \`${what}\``, cure)
  return undefined
}

/** A price such as `0.60`, `£2.20` or `2,20`; otherwise a finding, and undefined. */
export function moneyIn(reading: Reading, entry: Entry | undefined, what = 'price'): Money | undefined {
  const cure = `Write a number such as \`${what}: 0.60\`; the currency stands once, as \`currency: £\``
  const [item] = textsOf(reading, entry, `\`${what}\` wants an amount`, cure)
  if (!item) return undefined
  const [, whole, part = ''] =
    /^[^\d.,-]{0,4}(\d{1,7})(?:[.,](\d{1,3}))?[^\d.,-]{0,4}$/.exec(item.text.trim()) ?? []
  if (whole !== undefined) return new Fraction(`${whole}.${part || '0'}`)
  report(reading, 'value', item.place, `\`${item.text.trim()}\` is no price`, cure)
  return undefined
}

/** Nobody sells a longer roll: whoever writes more has slipped. */
const longest = mm(1_000_000)

/** A length of nothing or more, without names; otherwise a finding, and undefined. */
export function lengthIn(reading: Reading, entry: Entry | undefined, what: string): Length | undefined {
  const cure = `Write a length such as \`${what}: 10 mm\``
  const [item] = textsOf(reading, entry, `\`${what}\` wants a length`, cure)
  if (!item) return undefined
  const length = attempt(reading, item, (text) => {
    const { expression } = parseMeasure(text)
    return evaluateLength(expression)
  })
  if (length === undefined || (length.gte(0) && length.lte(longest))) return length
  const why = length.lt(0) ? 'cannot be less than nothing' : 'is longer than anything that is sold'
  report(reading, 'value', item.place, `\`${what}\` ${why}`, cure)
  return undefined
}

/** A finding for every key that nobody asked for. Between braces a comma ends a value: `price: 1,80` has a key `80`. */
export function checkSaleKeys(
  reading: Reading,
  fields: Fields,
  known: readonly string[],
  owner: string,
): void {
  const rest = [...fields].filter(([key, { keyPlace }]) => {
    if (!/^\d+$/.test(key)) return true
    report(
      reading,
      'value',
      keyPlace,
      'Between braces a comma ends a value',
      'Write a point in numbers, such as `price: 1.80`',
    )
    return false
  })
  checkKeys(reading, new Map(rest), known, owner)
}
