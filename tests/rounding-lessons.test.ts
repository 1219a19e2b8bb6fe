import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { inches } from '../src/length/length.ts'
import { readLesson } from '../src/lesson/read.ts'
import { isOrdinary, printed } from './rounding/prints.ts'
import { anySize, rulers, squareSize } from './rounding/sizes.ts'

const folder = fileURLToPath(new URL('../lessons/', import.meta.url))
const lessons = readdirSync(folder).filter((name) => name.endsWith('.md'))

/** On a machine that does much else, in milliseconds. */
const patience = 240_000

/** What is printed of fifty sizes. Every fifth one goes back to inches, too: a print costs about 30 ms. */
const prints = (square: boolean) =>
  fc.record({
    size: square ? squareSize : anySize,
    inch: fc.constantFrom(...rulers.in),
    metric: fc.constantFrom(...rulers.mm),
    back: fc.integer({ min: 1, max: 5 }).map((n) => n === 5),
  })

/** Seven letters of 5/8 in and two margins of 1/4 in, and a little for rulers of 1/8 in and 1 mm. */
const narrowest = (name: string) => (name === 'harbour-lights.md' ? inches(21, 4) : inches(4))

test.each(lessons)(
  '%s holds at fifty sizes, in inches, in millimetres and back',
  (name) => {
    const lesson = readLesson(readFileSync(folder + name, 'utf8'))
    const square = lesson.cards.some(({ text }) => /^fold: exploding box$/m.test(text))
    let ordinary = 0
    fc.assert(
      fc.property(prints(square), ({ size, inch, metric, back }) => {
        const first = printed(lesson, size, 'in', inch)
        const second = printed(lesson, first.closed, 'mm', metric)
        const third = back ? [printed(lesson, second.closed, 'in', inch)] : []
        const all = [first, second, ...third]
        expect(all.flatMap(({ troubles }) => troubles)).toEqual([])
        if (!isOrdinary(second.closed, narrowest(name), square)) return
        ordinary++
        const errors = all.flatMap(({ filled }) =>
          filled.findings.filter(({ severity }) => severity === 'error'),
        )
        expect(errors).toEqual([])
      }),
      { numRuns: 50, seed: 1959 },
    )
    expect(ordinary).toBeGreaterThan(10)
  },
  patience,
)
