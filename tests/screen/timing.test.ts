import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { TimedStep } from '../../src/lesson/time-of-steps.ts'
import {
  atFirst,
  elapsed,
  leftInLesson,
  leftInStep,
  moved,
  oneMore,
  paused,
  resumed,
  type Timing,
  upTo,
  waiting,
} from '../../src/screen/timing.ts'

const min = 60_000
const steps: readonly TimedStep[] = [
  { number: 1, minutes: 5 },
  { number: 2, minutes: 3, drying: { minutes: 20, of: ['mat'], before: 4 } },
  { number: 3, minutes: 4 },
  { number: 4, minutes: 6 },
  { number: 5 },
]

test('the clock stands still until the first step is shown, and then counts', () => {
  const waits = upTo(atFirst(steps), 9 * min)
  expect([elapsed(waits), leftInLesson(waits, steps, 9 * min)]).toEqual([0, 34 * min])
  const begun = moved(waits, 0, 10 * min, steps)
  const later = upTo(begun, 12 * min)
  expect([elapsed(later), leftInStep(later, steps)]).toEqual([2 * min, 3 * min])
})

test('a step that takes longer is below zero, and the lesson becomes longer with it', () => {
  const late = upTo(moved(atFirst(steps), 0, 0, steps), 7 * min)
  expect(leftInStep(late, steps)).toBe(-2 * min)
  expect(leftInLesson(late, steps, 7 * min)).toBe(29 * min)
})

test('a pause counts nothing, and a minute more is given to the step that is shown', () => {
  const stopped = paused(moved(atFirst(steps), 0, 0, steps), 2 * min)
  const on = resumed(stopped, 30 * min)
  expect(elapsed(upTo(on, 31 * min))).toBe(3 * min)
  expect(leftInStep(oneMore(upTo(on, 31 * min)), steps)).toBe(3 * min)
})

test('going back to a step goes on with its time', () => {
  let timing = moved(atFirst(steps), 0, 0, steps)
  timing = moved(timing, 1, 2 * min, steps)
  timing = moved(timing, 0, 3 * min, steps)
  timing = upTo(timing, 4 * min)
  expect(timing.spent).toEqual([3 * min, min, 0, 0, 0])
  expect(leftInStep(timing, steps)).toBe(2 * min)
})

test('what a step leaves dries from when it is left, also in a pause, and the step that needs it waits', () => {
  let timing = moved(atFirst(steps), 1, 0, steps)
  timing = moved(timing, 2, 3 * min, steps)
  expect(waiting(timing, steps, 4 * min)).toBeUndefined()
  timing = paused(timing, 4 * min)
  timing = moved(timing, 3, 10 * min, steps)
  expect(waiting(timing, steps, 10 * min)).toEqual({ step: 2, left: 13 * min })
  expect(leftInLesson(timing, steps, 10 * min)).toBe(19 * min)
  expect(waiting(timing, steps, 23 * min)).toBeUndefined()
})

test('a step without minutes has no time left; where none has any, the lesson has none', () => {
  const timing = moved(atFirst(steps), 4, 0, steps)
  expect(leftInStep(timing, steps)).toBeUndefined()
  const untimed = [{ number: 1 }, { number: 2 }]
  expect(leftInLesson(moved(atFirst(untimed), 0, 0, untimed), untimed, min)).toBeUndefined()
})

test('whatever is done, what is gone is the time in which the clock ran', () => {
  const deed = fc.record({
    wait: fc.integer({ min: 0, max: 10 * min }),
    what: fc.oneof(fc.constantFrom('pause' as const, 'go on' as const, 'more' as const), fc.nat({ max: 4 })),
  })
  fc.assert(
    fc.property(fc.array(deed, { maxLength: 20 }), (deeds) => {
      let now = 1000
      let ran = 0
      let timing: Timing = moved(atFirst(steps), 0, now, steps)
      for (const { wait, what } of deeds) {
        now += wait
        if (timing.running) ran += wait
        if (what === 'pause') timing = paused(timing, now)
        else if (what === 'go on') timing = resumed(timing, now)
        else if (what === 'more') timing = oneMore(upTo(timing, now))
        else timing = moved(timing, what, now, steps)
      }
      expect(elapsed(timing)).toBe(ran)
      expect(leftInLesson(timing, steps, now)).toBeGreaterThanOrEqual(0)
    }),
  )
})

test('a clock that is put back counts nothing', () => {
  expect(elapsed(upTo(upTo(moved(atFirst(steps), 0, 60 * min, steps), 61 * min), 2 * min))).toBe(min)
})
