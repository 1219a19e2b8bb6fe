import { type Finding, hasErrors } from '../length/finding.ts'
import { fillLesson } from '../lesson/fill.ts'
import type { FilledLesson, Lesson, Wishes } from '../lesson/lesson.ts'
import { readLesson } from '../lesson/read.ts'
import { findingsText } from './findings.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { readText } from './read-text.ts'

/** What the options wish of a lesson. */
export const wishesOf = ({ closed, units, grid }: Options): Wishes => ({
  ...(closed?.size && { closed: closed.size }),
  ...(closed?.turned && { turned: closed.turned }),
  ...(units && { units }),
  ...(grid && { grid }),
})

/** Reads a lesson and fills it in. Throws OutsideError when the file cannot be read. */
export async function lessonFrom(path: string, options: Options, outside: Outside): Promise<FilledLesson> {
  return (await lessonAndFilled(path, options, outside)).filled
}

/** Reads a lesson, and gives it both as it is read and filled in. Throws OutsideError when the file cannot be read. */
export async function lessonAndFilled(
  path: string,
  options: Options,
  outside: Outside,
): Promise<{ lesson: Lesson; filled: FilledLesson }> {
  const lesson = readLesson(await readText(path, outside))
  return { lesson, filled: fillLesson(lesson, wishesOf(options)) }
}

/** What would make a lesson better and is no concern of whoever prints it: `check` tells it. */
const forCheckAlone: ReadonlySet<string> = new Set(['step-without-figure'])

/** Tells what was found in a lesson; gives whether the command can go on. */
export function tellFindings(
  path: string,
  findings: readonly Finding[],
  options: Options,
  outside: Outside,
): boolean {
  const told = findings.filter(({ rule }) => !forCheckAlone.has(rule))
  outside.stderr(findingsText(path, told, options))
  return !hasErrors(findings)
}
