import { dirname } from 'node:path'
import { hasErrors } from '../../length/finding.ts'
import { publishHandout } from '../../publish/handout.ts'
import { withOfferedFigures } from '../../publish/offered-figures.ts'
import { BrowserError } from '../../publish/problems.ts'
import { findingJson } from '../../workshop/finding-json.ts'
import { asJson, tellWritten } from '../answer.ts'
import type { Action } from '../commands.ts'
import { lessonAndFilled, tellFindings } from '../lesson-file.ts'
import { pagesFor } from '../pages.ts'
import { printSettings } from '../print-settings.ts'
import { exitCodes, UsageError } from '../problems.ts'

/** `handout LESSON`: the page is kept when there is no browser to make the PDF with. */
export const handout: Action = async ([path = ''], options, outside) => {
  if (options.figures === 'list')
    throw new UsageError('Only `check` lists figures', 'Write `check --figures list`, or `--figures auto`')
  const { lesson: read, filled } = await lessonAndFilled(path, options, outside)
  const lesson = options.figures === 'auto' ? withOfferedFigures(read, filled) : filled
  const pages = await pagesFor(path, '', options, outside)
  const settings = { ...pages, ...printSettings(options, outside), folder: dirname(path) }
  try {
    const { paths, findings } = await publishHandout(lesson, settings, outside)
    if (options.json) outside.stdout(asJson({ written: paths, findings: findings.map(findingJson) }))
    else {
      tellFindings(path, findings, options, outside)
      tellWritten(paths, options, outside)
    }
    return hasErrors(findings) ? exitCodes.lessonErrors : exitCodes.done
  } catch (error) {
    if (error instanceof BrowserError && pages.html) tellWritten([`${pages.out}.html`], options, outside)
    throw error
  }
}
