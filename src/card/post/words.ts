import type Fraction from 'fraction.js'
import type { Wording } from '../../wording/wording.ts'
import type { FiguresDate, Miss } from './rules.ts'

/**
 * Why a class of letters does not take an item, in words.
 *
 * @param wording in the unit of the country's limits.
 */
export function missWords(miss: Miss, { say, length, in: inUnit }: Wording): string {
  // Times are decimals and never fractions.
  const times = (n: Fraction): string => inUnit('mm').number(n)
  switch (miss.kind) {
    case 'side': {
      const { side, bound, has, limit } = miss
      return say('kit.miss-side', { side, bound, has: length(has), limit: length(limit) })
    }
    case 'together':
      return say('kit.miss-together', { has: length(miss.has), limit: length(miss.limit) })
    case 'ratio':
      return say('kit.miss-ratio', { bound: miss.bound, has: times(miss.has), limit: times(miss.limit) })
    case 'square':
      return miss.least ? say('kit.miss-square-ratio', { limit: times(miss.least) }) : say('kit.miss-square')
    case 'thin for its size':
      return say('kit.miss-thin', { least: length(miss.least) })
  }
}

/** `2010 to 2016`, `February 2025`, `read in November 2026`. */
export function dateWords({ from, year, month, read }: FiguresDate, wording: Wording): string {
  if (from !== undefined) return wording.say('kit.years', { from: String(from), to: String(year) })
  if (month === undefined) return String(year)
  const when = wording.month(year, month)
  return read ? wording.say('kit.read-in', { month: when }) : when
}
