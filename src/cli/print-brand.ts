import { dirname } from 'node:path'
import type { FilledLesson } from '../lesson/lesson.ts'
import type { PageBrand } from '../publish/brand/page-brand.ts'
import { readBrand } from '../publish/brand/read-brand.ts'
import type { Options } from './flags.ts'
import { tellFindings } from './lesson-file.ts'
import type { Outside } from './outside.ts'

/**
 * What the workshop puts on a print; what is wrong with it is told.
 *
 * @param path of the file that is printed: its folder, or the one above, may have a `workshop.yaml`.
 * @param lesson that it is about; none where it is about several.
 */
export async function brandFor(
  path: string,
  lesson: FilledLesson | undefined,
  options: Options,
  outside: Outside,
): Promise<{ readonly brand?: PageBrand }> {
  const { brand, findings } = await readBrand(lesson?.frontMatter.brand, dirname(path), outside)
  tellFindings(path, findings, options, outside)
  return brand ? { brand } : {}
}
