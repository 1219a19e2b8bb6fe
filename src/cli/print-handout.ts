import { hasErrors } from '../length/finding.ts'
import { type HandoutOptions, publishHandout } from '../publish/handout.ts'
import { withOfferedFigures } from '../publish/offered-figures.ts'
import { BrowserError } from '../publish/problems.ts'
import { findingJson } from '../workshop/finding-json.ts'
import { asJson, tellWritten } from './answer.ts'
import type { Options } from './flags.ts'
import { lessonAndFilled, tellFindings } from './lesson-file.ts'
import type { Outside } from './outside.ts'
import { exitCodes } from './problems.ts'

/**
 * Reads a lesson and prints its handout. The page is kept when there is no browser to make the PDF with.
 *
 * @returns the exit code.
 * @throws what publishing a handout throws.
 */
export async function printHandout(
  path: string,
  settings: HandoutOptions,
  options: Options,
  outside: Outside,
): Promise<number> {
  const { lesson: read, filled } = await lessonAndFilled(path, options, outside)
  const lesson = options.figures === 'auto' ? withOfferedFigures(read, filled) : filled
  try {
    const { paths, findings } = await publishHandout(lesson, settings, outside)
    if (options.json) outside.stdout(asJson({ written: paths, findings: findings.map(findingJson) }))
    else {
      tellFindings(path, findings, options, outside)
      tellWritten(paths, options, outside)
    }
    return hasErrors(findings) ? exitCodes.lessonErrors : exitCodes.done
  } catch (error) {
    if (error instanceof BrowserError && settings.html !== false)
      tellWritten([`${settings.out}.html`], options, outside)
    throw error
  }
}
