import type { Locale } from './locales.ts'
import { enGB } from './messages/en-gb.ts'

type Messages = typeof enGB
type Area = keyof Messages

/** The name of a message: its file and its name there, such as `figures.turn-over`. */
export type MessageKey = { [A in Area]: `${A}.${keyof Messages[A] & string}` }[Area]

/** The messages of a language: all of them, or in American English what is spelt otherwise than in British English. */
export type Catalogue = { readonly [A in Area]?: Readonly<Record<string, string>> }

/** British English is always there; the others are learnt where they are wanted, because they take time to load. */
const learnt = new Map<Locale, Catalogue>([['en-GB', enGB]])

/** From now on what is said in this language is said by these messages. */
export function learn(locale: Locale, catalogue: Catalogue): void {
  learnt.set(locale, catalogue)
}

export const isLearnt = (locale: Locale): boolean => learnt.has(locale)

/** A message as it stands in the catalogue, in ICU form; in British English where the language does not have it. */
export function messageOf(locale: Locale, key: MessageKey): string {
  const dot = key.indexOf('.')
  const [area, name] = [key.slice(0, dot) as Area, key.slice(dot + 1)]
  return learnt.get(locale)?.[area]?.[name] ?? (enGB[area] as Readonly<Record<string, string>>)[name] ?? ''
}

/** A message in every language that is learnt. */
export const inLearnt = (key: MessageKey): string[] =>
  [...learnt.keys()].map((locale) => messageOf(locale, key))

/** What the language calls the pieces, panels, stocks and folds of foldlore's own. */
export const ownNames = (locale: Locale): Readonly<Record<string, string>> => learnt.get(locale)?.names ?? {}

/** The names of all messages. */
export const messageKeys = (): string[] =>
  Object.entries(enGB).flatMap(([area, messages]) => Object.keys(messages).map((name) => `${area}.${name}`))
