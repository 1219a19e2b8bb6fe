import type { Locale } from './locales.ts'
import { de } from './messages/de.ts'
import { enGB } from './messages/en-gb.ts'
import { enUS } from './messages/en-us.ts'
import { es } from './messages/es.ts'
import { fr } from './messages/fr.ts'

type Messages = typeof enGB
type Area = keyof Messages

/** The name of a message: its file and its name there, such as `figures.turn-over`. */
export type MessageKey = { [A in Area]: `${A}.${keyof Messages[A] & string}` }[Area]

type Catalogue = { readonly [A in Area]?: Readonly<Record<string, string>> }

/** All messages by language. American English has what is spelt otherwise than in British English. */
export const catalogues: Readonly<Record<Locale, Catalogue>> = { 'en-GB': enGB, 'en-US': enUS, de, fr, es }

/** A message as it stands in the catalogue, in ICU form; in British English where the language does not have it. */
export function messageOf(locale: Locale, key: MessageKey): string {
  const dot = key.indexOf('.')
  const [area, name] = [key.slice(0, dot) as Area, key.slice(dot + 1)]
  return catalogues[locale][area]?.[name] ?? (enGB[area] as Readonly<Record<string, string>>)[name] ?? ''
}
