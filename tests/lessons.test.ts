import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { scoresOf } from '../src/card/scores.ts'
import { isOnGrid } from '../src/length/grid.ts'
import type { Size, Unit } from '../src/length/length.ts'
import { fillLesson } from '../src/lesson/fill.ts'
import { readLesson } from '../src/lesson/read.ts'

const folder = fileURLToPath(new URL('../lessons/', import.meta.url))
const lessons = readdirSync(folder).filter((name) => name.endsWith('.md'))
const units: Unit[] = ['in', 'mm']

/** What is taught from must be right in every size that it is offered in, and in both units. */
describe.each(lessons)('%s', (name) => {
  const lesson = readLesson(readFileSync(folder + name, 'utf8'))
  const sizes: (Size | undefined)[] = [undefined, ...lesson.frontMatter.sizes.map(({ size }) => size)]
  const prints = sizes.flatMap((closed) =>
    units.map((unit) => fillLesson(lesson, { units: unit, ...(closed && { closed }) })),
  )

  test('is offered in three other sizes', () => expect(lesson.frontMatter.sizes).toHaveLength(3))

  test('has nothing to complain about, in any size and unit', () => {
    for (const print of prints) expect(print.findings).toEqual([])
  })

  test('shuts to the size it declares, and stands', () => {
    for (const { card, proof } of prints.flatMap((print) => print.cards)) {
      expect(proof.closed?.size.width.equals(card.closed.width)).toBe(true)
      expect(proof.closed?.size.height.equals(card.closed.height)).toBe(true)
      expect(proof.standing?.height).toBeGreaterThan(0)
    }
  })

  test('asks for no cut and no score that the ruler does not show', () => {
    for (const { card } of prints.flatMap((print) => print.cards)) {
      const { pieces, hinges } = card.structure
      const lengths = [
        ...pieces.flatMap(({ size }) => [size.width, size.height]),
        ...scoresOf(hinges).map((s) => s.at),
      ]
      expect(lengths.every((x) => isOnGrid(x, card.grid))).toBe(true)
    }
  })

  test('takes no longer than an afternoon, and every step says how long', () => {
    for (const step of lesson.steps) expect(step.minutes, `step ${step.number}`).toBeGreaterThan(0)
    expect(lesson.steps.reduce((sum, step) => sum + (step.minutes ?? 0), 0)).toBeLessThan(120)
  })
})
