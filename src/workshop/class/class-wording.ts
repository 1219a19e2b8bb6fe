import { type Wording, wordingOf } from '../../wording/wording.ts'
import type { ClassFile } from './class-file.ts'
import type { Taught } from './taught.ts'

/**
 * How the lists of a class speak: in the language that its file says, or else in that of its first lesson; and in the
 * unit of that lesson.
 */
export function classWording({ lang }: Pick<ClassFile, 'lang'>, [first]: readonly Taught[]): Wording {
  if (!first) return wordingOf(lang ?? 'en', 'in')
  const { wording, unit } = first.lesson
  return lang === undefined ? wording : wordingOf(lang, unit)
}
