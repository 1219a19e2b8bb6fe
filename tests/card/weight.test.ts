import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { caliperOf } from '../../src/card/stock.ts'
import { gramsPerSquareMetre } from '../../src/card/weight.ts'
import data from '../data/paper-weight.json' with { type: 'json' }

/** Sources stand in the data file: exact conversion over the basis sizes, and ISO 534 for thickness from bulk. */
test.each(data.weights)('$id', ({ lb, grade, expect_gsm, tolerance }) => {
  const gsm = gramsPerSquareMetre(`${lb} lb ${grade.split(' ')[0]}`).valueOf()
  expect(Math.abs(gsm - expect_gsm)).toBeLessThan(tolerance)
})

test.each(data.thickness)('$id', ({ gsm, bulk_cm3_per_g, expect_mm }) => {
  expect(caliperOf(new Fraction(gsm), new Fraction(bulk_cm3_per_g)).valueOf()).toBeCloseTo(expect_mm, 9)
})
