import { type TimedStep, timeOfSteps } from '../lesson/time-of-steps.ts'

/** How the time of a class has gone so far. All times in milliseconds. */
export interface Timing {
  /** Place of the step that is being worked at; none before the first has been shown. */
  readonly step?: number
  readonly running: boolean
  /** Up to when the time is counted in `spent`. */
  readonly until: number
  /** What has been spent at each step, and what has been given to it besides. */
  readonly spent: readonly number[]
  readonly extra: readonly number[]
  /** When what each step left is dry, once it has been left. */
  readonly dryAt: readonly (number | null)[]
}

const minute = 60_000

export const atFirst = (steps: readonly TimedStep[]): Timing => ({
  running: false,
  until: 0,
  spent: steps.map(() => 0),
  extra: steps.map(() => 0),
  dryAt: steps.map(() => null),
})

/** The same with the time counted up to now. A clock that was put back counts nothing. */
export function upTo(timing: Timing, now: number): Timing {
  const { step, running, until, spent } = timing
  if (step === undefined || !running) return { ...timing, until: now }
  const gone = Math.max(0, now - until)
  return { ...timing, until: now, spent: spent.map((ms, i) => (i === step ? ms + gone : ms)) }
}

/** Another step is shown. The first one that is starts the clock. What a step leaves behind begins to dry. */
export function moved(timing: Timing, to: number, now: number, steps: readonly TimedStep[]): Timing {
  const counted = upTo(timing, now)
  const { step, dryAt } = counted
  if (step === undefined) return { ...counted, step: to, running: true }
  if (to === step) return counted
  const left = (i: number): boolean => i >= step && i < to && steps[i]?.drying !== undefined
  return {
    ...counted,
    step: to,
    dryAt: dryAt.map((at, i) => (left(i) ? now + (steps[i]?.drying?.minutes ?? 0) * minute : at)),
  }
}

export const paused = (timing: Timing, now: number): Timing => ({ ...upTo(timing, now), running: false })
export const resumed = (timing: Timing, now: number): Timing => ({ ...upTo(timing, now), running: true })

/** The step that is being worked at gets a minute more. */
export const oneMore = (timing: Timing): Timing => ({
  ...timing,
  extra: timing.extra.map((ms, i) => (i === timing.step ? ms + minute : ms)),
})

export const elapsed = ({ spent }: Timing): number => spent.reduce((sum, ms) => sum + ms, 0)

/** What is left for the step; below zero when it takes longer. Undefined where it says no minutes. */
export function leftInStep({ step, spent, extra }: Timing, steps: readonly TimedStep[]): number | undefined {
  const minutes = step === undefined ? undefined : steps[step]?.minutes
  if (step === undefined || minutes === undefined) return undefined
  return minutes * minute + (extra[step] ?? 0) - (spent[step] ?? 0)
}

/** What is left of the lesson with the waiting for what dries. Undefined where no step says its minutes. */
export function leftInLesson(timing: Timing, steps: readonly TimedStep[], now: number): number | undefined {
  if (steps.every(({ minutes }) => minutes === undefined)) return undefined
  const { step = 0, dryAt } = timing
  const left = timing.step === undefined ? undefined : leftInStep(timing, steps)
  // What lies to dry already is as a step that takes no time.
  const wet = steps.slice(0, step).flatMap(({ drying }, i): TimedStep[] => {
    const at = dryAt[i]
    if (!drying || at === undefined || at === null || at <= now) return []
    return [{ number: 0, minutes: 0, drying: { ...drying, minutes: (at - now) / minute } }]
  })
  const [first, ...later] = steps.slice(step)
  const here = first && left !== undefined ? { ...first, minutes: Math.max(0, left / minute) } : first
  return timeOfSteps([...wet, ...(here ? [here] : []), ...later]) * minute
}

/** For how long the step that is shown must still wait for what an earlier one left, and which that is. */
export function waiting(
  { step, dryAt }: Timing,
  steps: readonly TimedStep[],
  now: number,
): { readonly step: number; readonly left: number } | undefined {
  const here = step === undefined ? undefined : steps[step]?.number
  if (here === undefined) return undefined
  const wet = steps.flatMap(({ number, drying }, i) => {
    const at = dryAt[i]
    const needed = drying?.before !== undefined && drying.before <= here && number < here
    return needed && at !== undefined && at !== null && at > now ? [{ step: number, left: at - now }] : []
  })
  return wet.sort((a, b) => b.left - a.left)[0]
}
