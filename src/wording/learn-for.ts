import { type Catalogue, isLearnt, learn } from './catalogue.ts'
import { type Locale, locales } from './locales.ts'

const files: Partial<Record<Locale, () => Promise<Catalogue>>> = {
  'en-US': async () => (await import('./messages/en-us.ts')).enUS,
  de: async () => (await import('./messages/de.ts')).de,
  fr: async () => (await import('./messages/fr.ts')).fr,
  es: async () => (await import('./messages/es.ts')).es,
}

/** Where a text may say its language, read loosely: one language too many is learnt, and never one too few. */
const says = /\blang["']?\s*:\s*["']?([a-z]{2,3})/gi

/** Learns the languages that a lesson or a class file may be in, before anything is said of it. */
export async function learnFor(text: string): Promise<void> {
  const said = new Set([...text.matchAll(says)].map(([, language = '']) => language.toLowerCase()))
  const wanted = locales.filter((locale) => said.has(locale.slice(0, 2)) && !isLearnt(locale))
  await Promise.all(
    wanted.map(async (locale) => {
      const catalogue = await files[locale]?.()
      if (catalogue) learn(locale, catalogue)
    }),
  )
}
