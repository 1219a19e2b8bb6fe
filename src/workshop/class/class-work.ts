import type { Wording } from '../../wording/wording.ts'
import type { CuttingOptions, Progress } from '../cutting/cutting.ts'
import { type ClassKit, classKit } from './class-kit.ts'
import { classWording } from './class-wording.ts'
import { type KitLabel, kitLabels } from './kit-labels.ts'
import { type ClassPlan, planClass } from './plan-class.ts'
import type { ReadClass, TaughtFile } from './read-with-lessons.ts'
import { type RunSheet, runSheet } from './run-sheet.ts'
import { shortFindings } from './short-findings.ts'
import { classTitle } from './taught.ts'

/** All that is worked out for a class. */
export interface ClassWork extends Pick<ReadClass, 'file' | 'lessons'> {
  /** Of the class file. */
  readonly path: string
  readonly title: string
  readonly wording: Wording
  readonly first: TaughtFile
  readonly plan: ClassPlan
  readonly kit: ClassKit
  readonly run: RunSheet
  readonly labels: readonly KitLabel[]
}

/** Works out a class that has a lesson at least. */
export async function workOut(
  path: string,
  { file, lessons }: Pick<ReadClass, 'file' | 'lessons'>,
  first: TaughtFile,
  progress: (progress: Progress) => void,
  signal?: CuttingOptions['signal'],
): Promise<ClassWork> {
  const wording = classWording(file, lessons)
  const { unit } = wording
  const plan = await planClass(file, lessons, { unit, progress, ...(signal && { signal }) })
  return {
    path,
    file,
    lessons,
    first,
    wording,
    title: classTitle(file, lessons),
    plan,
    kit: classKit(file, lessons, plan.purchases, shortFindings(plan.short, file)),
    run: runSheet(file, lessons),
    labels: kitLabels(file, lessons),
  }
}
