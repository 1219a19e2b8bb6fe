import { describe, expect, test } from 'vitest'
import { countsIn } from '../../../src/workshop/cutting/choice.ts'
import { gridOf } from '../../../src/workshop/cutting/grid.ts'
import { limitedValue } from '../../../src/workshop/cutting/limited-value.ts'
import { mostValue } from '../../../src/workshop/cutting/most-value.ts'
import { mostWithin } from '../../../src/workshop/cutting/most-within.ts'
import type { Shape } from '../../../src/workshop/cutting/problem.ts'
import data from '../../data/cutting-knapsack.json' with { type: 'json' }

type Sides = readonly (readonly number[])[]

/** A published sheet, with the ways in which its pieces may lie on it. */
function shapeOf([width = 0, height = 0]: readonly number[], pieces: Sides, turns: boolean): Shape {
  const ways = pieces.flatMap(([w = 0, h = 0], kind) => [
    { kind, width: w, height: h, turned: false },
    ...(turns ? [{ kind, width: h, height: w, turned: true }] : []),
  ])
  return { width, height, ways: ways.filter((way) => way.width <= width && way.height <= height) }
}

const areas = (pieces: Sides): number[] => pieces.map(([w = 0, h = 0]) => w * h)

// Turned, gcut13 takes as long as all others together.
describe.each(data.unconstrained)('$id with any number of each piece', (one) => {
  test.each([
    ['upright', false, one.unconstrained_fixed],
    ['turned', true, one.unconstrained_rotated],
  ] as const)('%s, the most is as published', (_, turns, value) => {
    if (turns && one.id === 'gcut13') return
    const grid = gridOf(shapeOf(one.sheet, one.pieces_lw, turns))
    expect(mostValue(grid, areas(one.pieces_lw)).best.at(-1)).toBe(value)
  })
})

const limited = [
  ...data.constrained.map(({ id, sheet, pieces_lwvn, pieces_lwn, guillotine_fixed }) => ({
    id,
    sheet,
    pieces: (pieces_lwvn ?? pieces_lwn ?? []) as Sides,
    values: pieces_lwvn?.map(([, , value = 0]) => value),
    value: guillotine_fixed,
  })),
  ...data.unconstrained.flatMap(({ id, sheet, pieces_lw, one_of_each_guillotine_fixed: value }) =>
    value === undefined
      ? []
      : [{ id: `${id}, one of each`, sheet, pieces: pieces_lw as Sides, values: undefined, value }],
  ),
]

// Hchl8s wants a hundred million pairs: what is left of it is a gap, told below.
describe.each(limited.filter(({ id }) => id !== 'Hchl8s'))(
  '$id',
  ({ id, sheet, pieces, values: given, value }) => {
    test('the most with no more than there are of each piece is as published', () => {
      const shape = shapeOf(sheet, pieces, false)
      const values = given ?? areas(pieces)
      const counts = pieces.map((one) => (id.endsWith('one of each') ? 1 : (one.at(-1) ?? 0)))
      const grid = gridOf(shape)
      const found = mostWithin(
        { shape, grid, values, table: mostValue(grid, values) },
        { counts, areas: areas(pieces) },
        { above: 0, first: false, pairs: 1e7 },
      )
      expect([found.value, found.ceiling]).toEqual([value, value])
      const held = found.box ? countsIn(found.box, pieces.length) : []
      expect(held.every((count, kind) => count <= (counts[kind] ?? 0))).toBe(true)
      expect(held.reduce((sum, count, kind) => sum + count * (values[kind] ?? 0), 0)).toBe(value)
      // The quick way finds much, and never more.
      const quick = limitedValue(grid, values, counts).best.at(-1) ?? 0
      expect(quick).toBeLessThanOrEqual(value)
      expect(quick).toBeGreaterThan(0.7 * value)
    })
  },
)

test('a search that is cut short says what it cannot rule out', () => {
  const one = limited.find(({ id }) => id === 'Hchl8s')
  if (!one) throw new Error('The instance is missing')
  const shape = shapeOf(one.sheet, one.pieces, false)
  const values = areas(one.pieces)
  const grid = gridOf(shape)
  const counts = one.pieces.map((piece) => piece.at(-1) ?? 0)
  const found = mostWithin(
    { shape, grid, values, table: mostValue(grid, values) },
    { counts, areas: values },
    { above: 0, first: false, pairs: 1e5 },
  )
  expect(found.value).toBeLessThanOrEqual(one.value)
  expect(found.ceiling).toBeGreaterThanOrEqual(one.value)
})
