import { motionHtml } from '../../publish/motion/motion.ts'
import { motionScript } from '../../publish/motion/script.ts'
import { mayWrite, writeWhole } from '../../publish/write.ts'
import { asJson, tellWritten } from '../answer.ts'
import type { Action } from '../commands.ts'
import { lessonFrom, tellFindings } from '../lesson-file.ts'
import { pagesFor } from '../pages.ts'
import { brandFor } from '../print-brand.ts'
import { printSettings } from '../print-settings.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `motion LESSON`: a page in which its cards fold, beside the lesson or where `-o` says. */
export const motion: Action = async ([path = ''], options, outside) => {
  const pages = await pagesFor(path, 'motion', options, outside)
  if (!pages.html) throw new UsageError('A PDF does not move', 'Name an `.html` file, or a folder')
  const out = `${pages.out}.html`
  const { paper, theme, force } = printSettings(options, outside)
  const lesson = await lessonFrom(path, options, outside)
  if (!tellFindings(path, lesson.findings, options, outside)) return exitCodes.lessonErrors
  await mayWrite(out, force, outside)
  const { brand } = await brandFor(path, lesson, options, outside)
  const page = await motionHtml(lesson, paper, theme, await motionScript(), brand)
  await writeWhole([{ path: out, data: new TextEncoder().encode(page) }], outside)
  if (options.json) outside.stdout(asJson({ written: [out] }))
  else tellWritten([out], options, outside)
  return exitCodes.done
}
