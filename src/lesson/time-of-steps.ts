import type { Step } from './lesson.ts'

/** What is to be known of a step to tell how long it takes. */
export type TimedStep = Pick<Step, 'number' | 'minutes' | 'drying'>

/**
 * How long steps take one after the other, in minutes: their own, and where a step needs what is not dry yet, the
 * waiting before it. What dries at the end is waited for. 0 when no step says its time.
 */
export function timeOfSteps(steps: readonly TimedStep[]): number {
  if (steps.every(({ minutes }) => minutes === undefined)) return 0
  let now = 0
  const wet: { dryAt: number; before: number }[] = []
  for (const { number, minutes = 0, drying } of steps) {
    now = Math.max(now, ...wet.filter(({ before }) => before <= number).map(({ dryAt }) => dryAt)) + minutes
    if (drying) wet.push({ dryAt: now + drying.minutes, before: drying.before ?? Number.POSITIVE_INFINITY })
  }
  return Math.max(now, ...wet.map(({ dryAt }) => dryAt))
}
