import { IntlMessageFormat } from 'intl-messageformat'

/** What goes into a message: texts as they are, numbers as the language writes them and as its plurals ask for. */
export type MessageValues = Readonly<Record<string, string | number>>

type Write = (values: MessageValues) => string

/** Only what the library is not needed for: a text in which nothing is put in and nothing is quoted. */
const isPlain = (message: string): boolean => !/[{}']/.test(message)

/**
 * Makes a function of a message in ICU form. Angle brackets are text like any other.
 *
 * @throws SyntaxError for a message that is not well-formed.
 */
export function readMessage(message: string, locale: string): Write {
  if (isPlain(message)) return () => message
  const format = new IntlMessageFormat(message, locale, undefined, { ignoreTag: true })
  return (values) => String(format.format<string>(values))
}
