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
export function dateWords({ from, year, month, read }: FiguresDate, { say, locale }: Wording): string {
  if (from !== undefined) return say('kit.years', { from: String(from), to: String(year) })
  if (month === undefined) return String(year)
  const when = new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' }).format(
    middleOf(year, month),
  )
  return read ? say('kit.read-in', { month: when }) : when
}

/** A moment in the middle of a month, in milliseconds since 1970: a year has 365.2425 days. */
const middleOf = (year: number, month: number): number =>
  (((year - 1970) * 12 + month - 0.5) / 12) * 365.2425 * 24 * 60 * 60 * 1000
