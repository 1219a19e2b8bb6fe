import { type Reading, report } from '../card/reading.ts'
import type { Entry } from '../card/yaml.ts'
import { listOf } from '../length/finding.ts'
import { localeOf, locales } from '../wording/locales.ts'
import { textsOf } from './yaml-reading.ts'

/**
 * Reads a language tag (BCP 47), such as `de-CH`. One that is none is an error, and one whose words foldlore does not
 * have is a warning.
 *
 * @param own what foldlore's words stand in, such as `the lesson`.
 */
export function langIn(reading: Reading, entry: Entry | undefined, own: string): string | undefined {
  const cure = 'Write `en` or `de-CH`'
  const [item] = textsOf(reading, entry, 'This wants a language tag', cure)
  const tag = item?.text.trim()
  if (!item || !tag) return undefined
  if (!isLanguage(tag)) {
    report(reading, 'value', item.place, `\`${tag}\` is not a language tag`, cure)
    return undefined
  }
  if (!localeOf(tag))
    report(
      reading,
      'foreign-words',
      item.place,
      `foldlore has no words in \`${tag}\`, so what it adds to ${own} is in English`,
      `Leave it so, or choose one of ${listOf(
        locales.map((locale) => `\`${locale}\``),
        'or',
      )}`,
      'warning',
    )
  return tag
}

function isLanguage(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length === 1
  } catch {
    return false
  }
}
