import { catalogues } from '../../../src/wording/languages.ts'
import type { Locale } from '../../../src/wording/locales.ts'
import { ownWords } from './lesson.ts'

/** Units that every language writes alike, what standards and posts are called, and keys of a class file. */
const everywhere =
  'mm cm kg ml yd oz lb min gsm ISO UPU US DL Monarch Long Standardbrief Kompaktbrief Großbrief trimmer stack'

const wordsOf = (text: string): string[] => text.match(/\p{L}{2,}/gu) ?? []

/** Every word of a language that foldlore has, and the names of its months. */
function known(locale: Locale): Set<string> {
  const texts = Object.values(catalogues[locale]).flatMap((area) => Object.values(area as object) as string[])
  const months = Array.from({ length: 12 }, (_, month) =>
    new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric' }).format(new Date(2026, month, 1)),
  )
  return new Set([...texts, ...months, everywhere].flatMap(wordsOf))
}

/** Words of a text that neither its language nor the lesson has. */
export function leftovers(text: string, locale: Locale): string[] {
  const own = known(locale)
  return [...new Set(wordsOf(text))].filter((word) => !own.has(word) && !ownWords.has(word))
}

/** All numbers of a text in order of size, whichever decimal sign they have. */
export const numbersIn = (text: string): number[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? [])
    .map((number) => Number(number.replace(',', '.')))
    .sort((a, b) => a - b)
