import { type Formatters, IntlMessageFormat } from 'intl-messageformat'
import { once } from '../length/once.ts'

/** What goes into a message: texts as they are, numbers as the language writes them and as its plurals ask for. */
export type MessageValues = Readonly<Record<string, string | number>>

// The library asks which languages the platform has numbers for, and the platform takes its time to begin with them.
IntlMessageFormat.resolveLocale = (locales) =>
  new Intl.Locale(typeof locales === 'string' ? locales : (locales[0] ?? 'en'))

type Write = (values: MessageValues) => string

/** A text into which only values are put, as they are: the library would take its time to start for it. */
const isSimple = (message: string): boolean => /^(?:[^{}']|\{\w+\})*$/.test(message)

/**
 * Makes a function of a message in ICU form. Angle brackets are text like any other.
 *
 * @throws SyntaxError for a message that is not well-formed.
 */
export function readMessage(message: string, locale: string): Write {
  if (isSimple(message)) return (values) => message.replace(/\{(\w+)\}/g, (_, name) => givenIn(values, name))
  const format = new IntlMessageFormat(message, locale, undefined, { ignoreTag: true, formatters })
  return (values) => String(format.format<string>(values))
}

/** Thousands stand as they do in every measure and table: `1200`, with nothing between. */
const formatters: Formatters = {
  getNumberFormat: (locale, options) => {
    const platform = once(() => new Intl.NumberFormat(locale, { ...options, useGrouping: false }))
    // A whole number is its digits: the platform would take its time to begin with them.
    const format = (n: number): string => (Number.isSafeInteger(n) ? String(n) : platform().format(n))
    return { format } as Intl.NumberFormat
  },
  getDateTimeFormat: (...args) => new Intl.DateTimeFormat(...args),
  getPluralRules: (...args) => new Intl.PluralRules(...args),
}

function givenIn(values: MessageValues, name: string): string {
  const value = values[name]
  if (value === undefined) throw new RangeError(`There is no \`${name}\` to put into a message`)
  return String(value)
}
