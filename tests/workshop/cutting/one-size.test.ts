import { describe, expect, test } from 'vitest'
import { inches, mm } from '../../../src/length/length.ts'
import { planCutting } from '../../../src/workshop/cutting/plan-cutting.ts'
import data from '../../data/cutting-one-size.json' with { type: 'json' }
import { piece, sheet, size } from './asked.ts'
import { mistakesIn } from './checker.ts'

/** How many of one size come out of one sheet: one more is asked for than the paper of a sheet is enough for. */
async function cut(on: number[], of: number[], unit: string, turns: boolean, gap = 0): Promise<number> {
  const [w = 0, h = 0] = on
  const [a = 0, b = 0] = of
  const asked = Math.floor((w * h) / (a * b)) + 1
  const pieces = [piece('card', 1, 1, asked, { size: size(a, b, unit), turns })]
  const sheets = [sheet(1, 1, { size: size(w, h, unit), limit: 1 })]
  const lost = unit === 'in' ? inches(gap) : mm(gap)
  const plan = await planCutting(pieces, sheets, { gap: lost })
  expect(mistakesIn(plan, pieces, sheets, lost)).toEqual([])
  return asked - plan.short.reduce((sum, { count }) => sum + count, 0)
}

describe.each(data.cases)('$id', ({ sheet: on, piece: of, unit, ...expected }) => {
  test.each([
    ['turned', true, expected.guillotine_rotated],
    ['upright', false, expected.guillotine_fixed],
  ] as const)('%s, as many as published', async (_, turns, count) => {
    expect(await cut(on, of, unit, turns)).toBe(count)
  })
})

test.each(data.pinwheel)(
  '$id: one less than without a trimmer',
  async ({ sheet: on, piece: of, unit, ...expected }) => {
    expect(await cut(on, of, unit, true)).toBe(expected.guillotine_rotated)
    expect(expected.guillotine_rotated).toBeLessThan(expected.non_guillotine_rotated)
  },
)

test.each(data.with_gap)('$id', async ({ sheet: on, piece: of, gap, unit, guillotine_rotated }) => {
  expect(await cut(on, of, unit, true, gap)).toBe(guillotine_rotated)
})
