import { brandKeys } from '../../../lesson/brand/read-brand.ts'
import { frontMatterKeys, frontMatterWords } from '../../../lesson/front-matter.ts'
import { ruleDocs } from '../../../lesson/rules/rules.ts'
import { supplyGroups } from '../../../lesson/supplies.ts'
import { locales } from '../../../wording/locales.ts'
import type { Completion } from '../complete.ts'
import type { KeptLesson } from '../kept-lesson.ts'
import type { Site } from '../site/site.ts'
import { brandKeyHelp, frontKeyHelp, supplyKeyHelp } from '../vocabulary/key-help.ts'
import { measureCompletions } from './measures.ts'
import { namedValues } from './names.ts'
import { sizeWords } from './sizes.ts'

/** The desk speaks English, also about languages. */
const named = new Intl.DisplayNames('en-GB', { type: 'language' })

/** What may be written in the front matter. */
export function frontCompletions(
  { at, path, from }: Extract<Site, { kind: 'front matter' }>,
  { filled }: KeptLesson,
): Completion[] {
  const [key = ''] = path
  if (at === 'key' && path.length === 0)
    return frontMatterKeys.map((word) => keyCompletion(word, from, frontKeyHelp(word)))
  if (at === 'key' && key === 'allow')
    return ruleDocs.map(({ name, about }) => keyCompletion(name, from, about))
  if (at === 'key' && key === 'brand')
    return path.length > 1 ? [] : brandKeys.map((word) => keyCompletion(word, from, brandKeyHelp(word)))
  if (key === 'lang')
    return locales.map((tag) => ({
      insert: tag,
      from,
      label: tag,
      detail: named.of(tag) ?? '',
      kind: 'word',
    }))
  if (key === 'sizes') return sizeWords(from, filled.unit)
  const words: readonly string[] =
    key in frontMatterWords ? frontMatterWords[key as keyof typeof frontMatterWords] : []
  return words.map((word) => ({ insert: word, from, label: word, kind: 'word' }))
}

/** What may be written in the list of supplies. */
export function supplyCompletions(
  { at, path, from, word }: Extract<Site, { kind: 'supplies' }>,
  { filled }: KeptLesson,
): Completion[] {
  if (at === 'key')
    return path.length > 0 ? [] : supplyGroups.map((key) => keyCompletion(key, from, supplyKeyHelp(key)))
  return measureCompletions(word, from + word.length, namedValues(filled))
}

function keyCompletion(word: string, from: number, help: string | undefined): Completion {
  return { insert: `${word}: `, from, label: word, ...(help !== undefined && { info: help }), kind: 'key' }
}
