import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { fitInside, mustCover, nearest } from '../../src/length/grid.ts'
import { mm } from '../../src/length/length.ts'
import { readLength } from '../../src/length/text.ts'
import data from '../data/units.json' with { type: 'json' }

/** Sources stand in the data file: the inch of 1959, and exact rational arithmetic. */
describe('inches in millimetres', () => {
  test.each(data.cases.filter((c) => c.expect_mm_fraction && c.inch))('$id', (c) => {
    expect(readLength(`${c.inch} in`).equals(new Fraction(c.expect_mm_fraction as string))).toBe(true)
  })
})

describe('millimetres on a ruler grid', () => {
  test.each(data.cases.filter((c) => c.grid))('$id', (c) => {
    const [x, grid] = [mm(new Fraction(c.mm as number)), readLength(`${c.grid} in`)]
    const marks = [fitInside(x, grid), nearest(x, grid), mustCover(x, grid)].map((y) => y.valueOf())
    expect(marks).toEqual(
      [c.down, c.nearest_half_even, c.up].map((text) => readLength(`${text} in`).valueOf()),
    )
  })
})
