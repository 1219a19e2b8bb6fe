import { dirname } from 'node:path'
import { type Finding, hasErrors } from '../length/finding.ts'
import { inFileOrder } from '../lesson/file-order.ts'
import { workOut } from '../workshop/class/class-work.ts'
import { type CheckedFile, drawingFindings } from './checked-file.ts'
import { classFrom } from './class-from.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { planProgress } from './plan-progress.ts'

/**
 * Checks a class file and its lessons, in the size and unit of the class. Where they have no errors the class is worked
 * out too: paper that is short and time that does not reach are findings of the class file.
 *
 * @throws OutsideError when the class file cannot be read.
 */
export async function checkClass(path: string, options: Options, outside: Outside): Promise<CheckedFile[]> {
  const read = await classFrom(path, options, outside)
  const found = new Map<string, readonly Finding[]>(read.findings)
  const add = (file: string, more: readonly Finding[]): void =>
    void found.set(file, [...(found.get(file) ?? []), ...more])
  for (const { lesson, path: file } of read.lessons)
    add(file, await drawingFindings(lesson, dirname(file), outside))
  const [first] = read.lessons
  const fine = [...read.findings.values()].every((findings) => !hasErrors(findings))
  if (first && fine) {
    const { kit, run } = await workOut(path, read, first, planProgress(options, outside))
    add(path, [...kit.findings, ...run.findings])
  }
  return [...found].map(([file, findings]) => ({
    file,
    kind: file === path ? 'class' : 'lesson',
    findings: inFileOrder(findings),
  }))
}
