import type { FilledLesson } from '../../lesson/lesson.ts'
import type { PageBrand } from '../brand/page-brand.ts'
import { handoutHtml } from '../html.ts'
import type { Paper } from '../page-css.ts'
import { loadMotionTheme } from '../theme.ts'
import { motionView } from './view.ts'

/**
 * The cards of a lesson in motion, from the flat sheet to shut and on to standing: one HTML page that stands alone.
 *
 * @param script the program of the page: see `motionScript`.
 * @throws ThemeError
 */
export async function motionHtml(
  lesson: FilledLesson,
  paper: Paper,
  theme: string,
  script: string,
  brand?: PageBrand,
): Promise<string> {
  return handoutHtml({ ...motionView(lesson), ...(brand && { brand }) }, await loadMotionTheme(theme), {
    paper,
    script,
  })
}
