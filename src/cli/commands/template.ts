import { startBrowser } from '../../publish/launch.ts'
import { tracingHtml, tracingPdf } from '../../publish/tracing.ts'
import { mayWrite, writeWhole } from '../../publish/write.ts'
import { asJson, tellWritten } from '../answer.ts'
import type { Action } from '../commands.ts'
import { lessonFrom, tellFindings } from '../lesson-file.ts'
import { pagesFor } from '../pages.ts'
import { printSettings } from '../print-settings.ts'
import { exitCodes } from '../problems.ts'

/** `template LESSON`: the page is written first, so it is there when no browser is found. */
export const template: Action = async ([path = ''], options, outside) => {
  const lesson = await lessonFrom(path, options, outside)
  if (!tellFindings(path, lesson.findings, options, outside)) return exitCodes.lessonErrors
  const { out, html: wantsHtml, pdf: wantsPdf } = await pagesFor(path, 'template', options, outside)
  const { paper, theme, force, browserPath } = printSettings(options, outside)
  const paths = [...(wantsHtml ? [`${out}.html`] : []), ...(wantsPdf ? [`${out}.pdf`] : [])]
  for (const one of paths) await mayWrite(one, force, outside)
  const page = await tracingHtml(lesson, paper, theme)
  const write = async (ending: string, data: Uint8Array): Promise<void> => {
    await writeWhole([{ path: `${out}${ending}`, data }], outside)
    if (!options.json) tellWritten([`${out}${ending}`], options, outside)
  }
  if (wantsHtml) await write('.html', new TextEncoder().encode(page))
  if (wantsPdf) {
    const browser = await startBrowser(browserPath)
    try {
      await write('.pdf', await tracingPdf(page, browser))
    } finally {
      await browser.close()
    }
  }
  if (options.json) outside.stdout(asJson({ written: paths }))
  return exitCodes.done
}
