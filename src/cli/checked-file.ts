import type { Finding } from '../length/finding.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import { readBrand } from '../publish/brand/read-brand.ts'
import { figuresOf } from '../publish/figures-of.ts'
import { readPictures } from '../publish/pictures.ts'
import { handoutView } from '../publish/view.ts'
import type { Outside } from './outside.ts'

/** A file that `check` has read, and what is wrong in it. */
export interface CheckedFile {
  readonly file: string
  readonly kind: 'class' | 'lesson'
  readonly findings: readonly Finding[]
}

/** What is found in a lesson only when its figures are drawn and its pictures read; its cards must be relied on. */
export async function drawingFindings(
  lesson: FilledLesson,
  folder: string,
  outside: Outside,
): Promise<readonly Finding[]> {
  const { pictures, findings } = await readPictures(lesson.tree, folder, outside)
  const { findings: ofBrand } = await readBrand(lesson.frontMatter.brand, folder, outside)
  return [...findings, ...ofBrand, ...handoutView(lesson, figuresOf(lesson), pictures).findings]
}
