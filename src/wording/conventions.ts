import { once } from '../length/once.ts'
import type { Locale } from './locales.ts'

export type Last = 'and' | 'or'

/** What is customary in a language beyond its words. */
export interface Conventions {
  /** Parts of a list, as they stand one after the other; what stands between two items that are not the last is `, `. */
  listed(items: readonly string[], last: Last): readonly string[]
  /** The sign in a decimal number. */
  readonly point: () => string
  /** A month of a year: `February 2025`. Months are numbered from 1. */
  month(year: number, month: number): string
}

/** The conventions of a language: those of Unicode's locale data (CLDR), which the platform has. */
export const conventionsOf = (locale: Locale): Conventions =>
  locale === 'en-GB' || locale === 'en-US' ? english(locale) : platform(locale)

/** The same for English. The platform takes longer to begin with its data than to measure a card. */
const english = (locale: 'en-GB' | 'en-US'): Conventions => ({
  listed: (items, last) => {
    const comma = locale === 'en-US' && items.length > 2 ? ',' : ''
    return items.flatMap((item, i) => {
      const between = i === items.length - 1 ? `${comma} ${last} ` : ', '
      return i === 0 ? [item] : [between, item]
    })
  },
  point: () => '.',
  month: (year, month) => `${months[month - 1]} ${year}`,
})

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

function platform(locale: Locale): Conventions {
  const lists = {
    and: once(() => new Intl.ListFormat(locale, { type: 'conjunction' })),
    or: once(() => new Intl.ListFormat(locale, { type: 'disjunction' })),
  }
  const dates = once(
    () => new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' }),
  )
  return {
    listed: (items, last) =>
      lists[last]()
        .formatToParts(items)
        .map(({ value }) => value),
    point: once(
      () =>
        new Intl.NumberFormat(locale).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.',
    ),
    month: (year, month) => dates().format(middleOf(year, month)),
  }
}

/** A moment in the middle of a month, in milliseconds since 1970: a year has 365.2425 days. */
const middleOf = (year: number, month: number): number =>
  (((year - 1970) * 12 + month - 0.5) / 12) * 365.2425 * 24 * 60 * 60 * 1000
