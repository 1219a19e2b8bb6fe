import type { TimedStep } from '../lesson/time-of-steps.ts'

/** What the page for the screen of a class is told, as plain data: the steps with their times. */
export interface ScreenTold {
  readonly title: string
  readonly steps: readonly TimedStep[]
}
