import { dirname } from 'node:path'
import { hasErrors } from '../../length/finding.ts'
import { screenHtml, screenScript } from '../../publish/screen/screen.ts'
import { mayWrite, writeWhole } from '../../publish/write.ts'
import { asJson, tellWritten } from '../answer.ts'
import type { Action } from '../commands.ts'
import { lessonFrom, tellFindings } from '../lesson-file.ts'
import { pagesFor } from '../pages.ts'
import { printSettings } from '../print-settings.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `screen LESSON`: a page that shows it step by step, beside the lesson or where `-o` says. */
export const screen: Action = async ([path = ''], options, outside) => {
  const pages = await pagesFor(path, 'screen', options, outside)
  if (!pages.html) throw new UsageError('A PDF has no clock', 'Name an `.html` file, or a folder')
  const out = `${pages.out}.html`
  const { paper, theme, force } = printSettings(options, outside)
  const lesson = await lessonFrom(path, options, outside)
  if (hasErrors(lesson.findings)) {
    tellFindings(path, lesson.findings, options, outside)
    return exitCodes.lessonErrors
  }
  await mayWrite(out, force, outside)
  const made = { paper, theme, folder: dirname(path), script: await screenScript() }
  const { html, findings } = await screenHtml(lesson, made, outside)
  tellFindings(path, findings, options, outside)
  if (html === undefined) return exitCodes.lessonErrors
  await writeWhole([{ path: out, data: new TextEncoder().encode(html) }], outside)
  if (options.json) outside.stdout(asJson({ written: [out] }))
  else tellWritten([out], options, outside)
  return exitCodes.done
}
