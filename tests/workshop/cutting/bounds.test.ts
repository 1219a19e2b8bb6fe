import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { coarseGrids } from '../../../src/workshop/cutting/coarse.ts'
import { gridOf } from '../../../src/workshop/cutting/grid.ts'
import { mostValue } from '../../../src/workshop/cutting/most-value.ts'
import { mostWithin } from '../../../src/workshop/cutting/most-within.ts'
import type { Shape } from '../../../src/workshop/cutting/problem.ts'
import { rasterOf } from '../../../src/workshop/cutting/raster.ts'

const side = fc.integer({ min: 5, max: 40 })
const sides = fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 4 })
const shapeOf = (list: readonly (readonly [number, number])[]): Shape => ({
  width: 61,
  height: 47,
  ways: list.map(([width, height], kind) => ({ kind, width, height, turned: false })),
})
const areas = (list: readonly (readonly [number, number])[]) => list.map(([w, h]) => w * h)

describe('rounded grids', () => {
  test('what they promise is at least the most, what they give at most', () => {
    fc.assert(
      fc.property(sides, fc.integer({ min: 6, max: 20 }), (list, sizes) => {
        const shape = shapeOf(list)
        const values = areas(list)
        const { grid, bounding } = coarseGrids(shape, sizes, sizes)
        const most = (of: typeof grid) => mostValue(of, values).best.at(-1) ?? 0
        const exact = most(gridOf(shape))
        expect(most(bounding)).toBeGreaterThanOrEqual(exact)
        expect(most(grid)).toBeLessThanOrEqual(exact)
      }),
    )
  })

  test('a search with a rounded bound finds the same', () => {
    fc.assert(
      fc.property(sides, fc.array(fc.nat(3), { minLength: 4, maxLength: 4 }), (list, most) => {
        const shape = shapeOf(list)
        const values = areas(list)
        const counts = most.slice(0, list.length)
        const { bounding } = coarseGrids(shape, 9, 9)
        const found = [gridOf(shape), bounding].map((grid) =>
          mostWithin(
            { shape, grid, values, table: mostValue(grid, values) },
            { counts, areas: values },
            { above: 0, first: false, pairs: 1e6 },
          ),
        )
        expect(found[1]?.value).toBe(found[0]?.value)
      }),
    )
  })
})

test('a search that stops at the first find still says what it cannot rule out', () => {
  fc.assert(
    fc.property(sides, fc.nat(1500), (list, above) => {
      const shape = shapeOf(list)
      const values = areas(list)
      const grid = gridOf(shape)
      const search = (first: boolean) =>
        mostWithin(
          { shape, grid, values, table: mostValue(grid, values) },
          { counts: list.map(() => 2), areas: values },
          { above, first, pairs: 1e6 },
        )
      const [quick, whole] = [search(true), search(false)]
      expect(quick.ceiling).toBeGreaterThanOrEqual(whole.value)
      expect(whole.ceiling).toBe(whole.value)
      expect(quick.box === undefined).toBe(whole.box === undefined)
    }),
  )
})

test('the sizes that matter are those that are the most beside another', () => {
  // By hand: sums of 4 and 6 up to 15 are 0, 4, 6, 8, 10, 12, 14. Beside 0 goes 14, beside 4 10, beside 6 8, beside 8 6,
  // beside 10 4, beside 12 nothing.
  expect(rasterOf(15, [4, 6])).toEqual([4, 6, 8, 10, 14])
})
