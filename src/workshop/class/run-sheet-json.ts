import { type FindingJson, findingJson } from '../finding-json.ts'
import { clockText } from './clock.ts'
import type { RunSheet } from './run-sheet.ts'
import type { Slot } from './slots.ts'

/** What `runsheet --json` answers; times as `HH:MM`. */
export interface RunSheetJson {
  readonly title: string
  readonly end?: string
  /** Minutes beyond the end. */
  readonly over: number
  readonly ahead: RunSheet['ahead']
  readonly courses: readonly {
    readonly title: string
    readonly finish: string
    readonly slots: readonly {
      readonly at: string
      readonly minutes: number
      readonly what: string
      readonly words: string
      readonly step?: number
      readonly stage?: string
      readonly lesson?: string
      /** When what the step leaves is dry. */
      readonly dryAt?: string
      /** What of the step is done before the class. */
      readonly beforehand?: Slot['beforehand']
    }[]
  }[]
  readonly findings: readonly FindingJson[]
}

/** A run sheet for other programs. */
export const runSheetJson = ({ title, end, over, ahead, courses, findings }: RunSheet): RunSheetJson => ({
  title,
  ...(end !== undefined && { end: clockText(end) }),
  over,
  ahead,
  courses: courses.map((course) => ({
    title: course.title,
    finish: clockText(course.finish),
    slots: course.slots.map(({ from, dryAt, ...rest }) => ({
      at: clockText(from),
      ...rest,
      ...(dryAt !== undefined && { dryAt: clockText(dryAt) }),
    })),
  })),
  findings: findings.map(findingJson),
})
