import type { TimedStep } from '../lesson/time-of-steps.ts'
import type { ScreenWords } from './words.ts'

/** What the page for the screen of a class is told, as plain data: the steps with their times, and its language. */
export interface ScreenTold {
  readonly title: string
  readonly steps: readonly TimedStep[]
  readonly words: ScreenWords
}
