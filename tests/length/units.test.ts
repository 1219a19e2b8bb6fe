import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { fitInside, mustCover, nearest } from '../../src/length/grid.ts'
import { inches, mm, numberIn } from '../../src/length/length.ts'
import { readLength } from '../../src/length/text.ts'
import data from '../data/units.json' with { type: 'json' }

/** Sources stand in the data file: the inch of 1959, NIST SP 811 and LC 1137, and exact rational arithmetic. */
describe('units by their definition', () => {
  test.each(data.definitions.filter(({ inch }) => inch !== undefined))(
    '$id',
    ({ inch = 0, mm: metric, mm_fraction }) => {
      expect(inches(new Fraction(inch)).equals(new Fraction(mm_fraction ?? metric ?? 0))).toBe(true)
    },
  )

  test('an inch is 25.4 mm', () => {
    const inch = data.definitions.find(({ id }) => id === 'inch')
    expect(readLength('1 in').equals(new Fraction(inch?.fraction_mm ?? 0))).toBe(true)
    expect(numberIn(readLength('1 in'), 'mm')).toBe(inch?.mm)
  })

  test.each(data.points)('$id', ({ pt, expect_mm }) => {
    expect(numberIn(inches(pt, 72), 'mm')).toBeCloseTo(expect_mm, 6)
  })
})

describe('inches in millimetres', () => {
  test.each(data.cases.filter((c) => c.expect_mm_fraction && c.inch))('$id', (c) => {
    const length = readLength(`${c.inch} in`)
    expect(length.equals(new Fraction(c.expect_mm_fraction as string))).toBe(true)
    expect(numberIn(length, 'mm')).toBeCloseTo(c.expect_mm ?? 0, 6)
    const tenth = nearest(length, mm(new Fraction(1, 10)))
    expect(numberIn(tenth, 'mm').toFixed(1)).toBe(c['mm_to_0.1_half_even'])
  })
})

describe('millimetres on a ruler grid', () => {
  test.each(data.cases.filter((c) => c.grid))('$id', (c) => {
    const [x, grid] = [mm(new Fraction(c.mm as number)), readLength(`${c.grid} in`)]
    const all = [fitInside(x, grid), nearest(x, grid), mustCover(x, grid)]
    expect(all.map((y) => y.valueOf())).toEqual(
      [c.down, c.nearest_half_even, c.up].map((text) => readLength(`${text} in`).valueOf()),
    )
    // Half way, when both marks are as far away.
    expect(all[0]?.add(all[2] as Fraction).equals(x.mul(2)) && !all[0]?.equals(x)).toBe(c.tie)
  })
})

describe('rules of rounding', () => {
  const rule = (id: string) => data.rounding_rules.find((one) => one.id === id)

  test('half way goes to the even digit', () => {
    const examples = rule('half-even')?.examples ?? []
    expect(examples.length).toBeGreaterThan(0)
    for (const [value = 0, digits = 0, expected = 0] of examples) {
      const grid = mm(new Fraction(1, 10 ** (Number(digits) - 1)))
      expect(nearest(mm(new Fraction(value)), grid).equals(new Fraction(expected)), String(value)).toBe(true)
    }
  })

  // How many digits are kept is up to whoever asks for a grid; these are the grids of the published examples.
  test.each([
    ['36 ft', 'm', 0.1, rule('keep-relative-error')?.example?.rounded_m],
    ['36 in', 'cm', 1, rule('lc1137-36in')?.cm],
    ['40.1 in', 'cm', 0.1, rule('lc1137-40.1in')?.cm],
  ])('%s is %s to a grid of %d, as published', (text, unit, step, published) => {
    const one = readLength(`1 ${unit}`)
    const rounded = nearest(readLength(text), mm(one.mul(new Fraction(step))))
    expect(rounded.div(one).valueOf()).toBe(Number(published))
  })
})
