import { tracingHtml, tracingPdf } from '../../publish/tracing.ts'
import { asJson } from '../answer.ts'
import type { Action } from '../commands.ts'
import { lessonFrom, tellFindings } from '../lesson-file.ts'
import { brandFor } from '../print-brand.ts'
import { printPages } from '../print-pages.ts'
import { exitCodes } from '../problems.ts'

/** `template LESSON`: the pieces at their real size, as a page and a PDF. */
export const template: Action = async ([path = ''], options, outside) => {
  const lesson = await lessonFrom(path, options, outside)
  if (!tellFindings(path, lesson.findings, options, outside)) return exitCodes.lessonErrors
  const { brand } = await brandFor(path, lesson, options, outside)
  const written = await printPages(
    { path, what: 'template' },
    {
      html: (theme, paper) => tracingHtml(lesson, paper, theme, brand),
      pdf: (html, _, browser) => tracingPdf(html, browser),
    },
    options,
    outside,
  )
  if (options.json) outside.stdout(asJson({ written }))
  return exitCodes.done
}
