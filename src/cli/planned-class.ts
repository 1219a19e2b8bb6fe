import type { Wording } from '../wording/wording.ts'
import { classWording } from '../workshop/class/class-wording.ts'
import { type ClassPlan, planClass } from '../workshop/class/plan-class.ts'
import type { ReadClass, TaughtFile } from '../workshop/class/read-with-lessons.ts'
import { classFrom, tellClass } from './class-from.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { planProgress } from './plan-progress.ts'
import { tellStopped } from './tell-stopped.ts'
import { timeLimit } from './time-limit.ts'

/** A class that has been read, and the cutting plan of it. */
export interface PlannedClass extends Pick<ReadClass, 'file' | 'lessons'> {
  readonly first: TaughtFile
  /** How lists about all of it speak. */
  readonly wording: Wording
  readonly plan: ClassPlan
}

/**
 * Reads a class and plans its sheets, as long as `--within` lets it. What is wrong with its files, and how good a plan is
 * that ran out of time, is told.
 *
 * @returns undefined when the class cannot be worked out.
 * @throws as `classFrom`.
 */
export async function plannedClass(
  path: string,
  options: Options,
  outside: Outside,
): Promise<PlannedClass | undefined> {
  const read = await classFrom(path, options, outside)
  const { file, lessons } = read
  const [first] = lessons
  if (!tellClass(read, options, outside) || !first) return undefined
  const wording = classWording(file, lessons)
  const signal = timeLimit(options.within)
  const plan = await planClass(file, lessons, {
    unit: wording.unit,
    signal,
    progress: planProgress(options, outside),
  })
  tellStopped(signal, plan, options, outside)
  return { file, lessons, first, wording, plan }
}
