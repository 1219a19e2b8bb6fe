import { type Catalogue, learn } from './catalogue.ts'
import type { Locale } from './locales.ts'
import { de } from './messages/de.ts'
import { enGB } from './messages/en-gb.ts'
import { enUS } from './messages/en-us.ts'
import { es } from './messages/es.ts'
import { fr } from './messages/fr.ts'

/** All messages by language. American English has what is spelt otherwise than in British English. */
export const catalogues: Readonly<Record<Locale, Catalogue>> = { 'en-GB': enGB, 'en-US': enUS, de, fr, es }

/** Learns every language at once: for programs in which a lesson of any language may come at any time. */
export function learnAll(): void {
  for (const [locale, catalogue] of Object.entries(catalogues)) learn(locale as Locale, catalogue)
}
