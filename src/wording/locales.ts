import { onceFor } from '../length/once.ts'

/** The languages that foldlore has all its words in; English twice, because it is spelt in two ways. */
export const locales = ['en-GB', 'en-US', 'de', 'fr', 'es'] as const
export type Locale = (typeof locales)[number]

/**
 * The words that a lesson gets: those of its language. `en` by itself is British, and English of other places is spelt
 * as there.
 *
 * @param tag a language tag (BCP 47), such as `de-CH`.
 * @returns undefined for a language whose words are not known.
 */
export function localeOf(tag: string): Locale | undefined {
  const { language, region } = new Intl.Locale(tag)
  if (language === 'en') return region === 'US' ? 'en-US' : 'en-GB'
  return locales.find((locale) => locale === language)
}

/** The same, with British English where the words are not known; kept, for every name in a print asks for it. */
export const localeFor: (tag: string) => Locale = onceFor((tag) => localeOf(tag) ?? 'en-GB')
