import { type Finding, hasErrors } from '../../length/finding.ts'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { readBrand } from '../brand/read-brand.ts'
import { handoutHtml } from '../html.ts'
import type { Outside } from '../outside.ts'
import type { Paper } from '../page-css.ts'
import { pageScript } from '../page-script.ts'
import { readPictures } from '../pictures.ts'
import { mustShowCautions } from '../safety.ts'
import { codesFor } from '../scan.ts'
import { loadScreenTheme } from '../theme.ts'
import { screenView } from './view.ts'

/** The program that shows one step at a time. Throws OutsideError when it has not been built. */
export const screenScript = (root?: string): Promise<string> =>
  pageScript('screen-page.js', 'shows a lesson step by step', root)

/** What a page for the screen of a class is made with. */
export interface ScreenOptions {
  /** For whoever prints it. */
  readonly paper: Paper
  readonly theme: string
  /** The lesson's folder: pictures are taken from there. */
  readonly folder: string
  /** The program of the page: see `screenScript`. */
  readonly script: string
}

/**
 * A lesson for the screen of a class, one step at a time: one HTML page that stands alone.
 *
 * @returns no page when there are errors.
 * @throws ThemeError
 */
export async function screenHtml(
  lesson: FilledLesson,
  { paper, theme, folder, script }: ScreenOptions,
  outside: Pick<Outside, 'read'>,
): Promise<{ html?: string; findings: readonly Finding[] }> {
  if (hasErrors(lesson.findings)) return { findings: lesson.findings }
  const [look, { pictures, findings: ofPictures }, { brand, findings: ofBrand }, codes] = await Promise.all([
    loadScreenTheme(theme),
    readPictures(lesson.tree, folder, outside),
    readBrand(lesson.frontMatter.brand, folder, outside),
    codesFor(lesson),
  ])
  const { view, findings: ofFigures } = screenView(lesson, pictures, codes)
  const findings = [...lesson.findings, ...ofPictures, ...ofBrand, ...ofFigures]
  if (hasErrors(findings)) return { findings }
  const html = await handoutHtml({ ...view, ...(brand && { brand }) }, look, { paper, script })
  mustShowCautions(view.safety, html, theme)
  return { html, findings }
}
