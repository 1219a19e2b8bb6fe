import Fraction from 'fraction.js'
import { inches, type Length, mm, times } from '../length/length.ts'

/** Cubic centimetres to a gram of ordinary uncoated card. From memory; a lesson may give the bulk or the caliper. */
export const usualBulk = new Fraction(5, 4)

/** Caliper of a sheet from its weight: grams per square metre times bulk in cm³/g (ISO 534), in micrometres. */
export const caliperOf = (gsm: Fraction, bulk = usualBulk): Length => mm(gsm.mul(bulk).div(1000))

/** What makers print instead of a length, and how long one of it is. */
const printed: readonly (readonly [unit: RegExp, one: Length])[] = [
  // A point of caliper is a thousandth of an inch (Printing Impressions), not the point of type.
  [/^(?:pt|points?)$/i, inches(1, 1000)],
  [/^(?:[µμu]m|microns?|micromet(?:re|er)s?)$/i, mm(new Fraction(1, 1000))],
  // Film: 100 gauge are a thousandth of an inch. From memory.
  [/^gauge$/i, inches(1, 100_000)],
]

/** A caliper as makers print it: `14 pt`, `190 µm`, `300 micron`, `75 gauge`; undefined for anything else. */
export function printedCaliper(text: string): Length | undefined {
  const [, count, unit = ''] = /^\s*(\d+(?:\.\d+)?)\s*(\p{L}+)\s*$/u.exec(text) ?? []
  const one = printed.find(([word]) => word.test(unit))?.[1]
  return count && one ? times(one, new Fraction(count)) : undefined
}
