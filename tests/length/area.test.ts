import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { areaNumber, areaOf, formatArea, readArea } from '../../src/length/area.ts'
import { evaluateExtent } from '../../src/length/evaluate-area.ts'
import { ExpressionError } from '../../src/length/expression.ts'
import { inches, mm } from '../../src/length/length.ts'
import { parseMeasure } from '../../src/length/parse.ts'

const extent = (text: string) => evaluateExtent(parseMeasure(text).expression)
const sqIn = (text: string) => {
  const value = extent(text)
  return value.kind === 'area' ? areaNumber(value.value, 'in') : value.kind
}

describe('areas', () => {
  test.each([
    ['8 in * 12 in', 96],
    ['8 1/2 in * 5 in * 2', 85],
    ['2 * (3 in * 4 in)', 24],
    ['(3 in * 4 in) / 8', 1.5],
    ['3 in * 4 in + 2 in * 1 in', 14],
    ['3 in * 4 in - 2 in * 1 in', 10],
    ['25.4 mm * 1 in', 1],
    ['(3 in * 4 in) / 2 in', 'length'],
    ['3 in * 4', 'length'],
    ['3 in / 4 in', 'number'],
  ])('%s', (text, expected) => expect(sqIn(text)).toEqual(expected))

  test.each([
    '3 in * 4 in + 2 in',
    '3 in * 4 in * 2 in',
    '5 / (3 in * 4 in)',
    '3 in * 4 in + 1',
    '(2 in * 1 in) / 0',
  ])('%s has no sense, and that is told at the part that has none', (text) => {
    expect(() => extent(text)).toThrow(ExpressionError)
  })

  test('a square inch is 6.4516 cm², exactly (1959 international agreement)', () => {
    const one = areaOf({ width: inches(1), height: inches(1) })
    expect(areaNumber(one, 'mm')).toBe(6.4516)
    expect(readArea('6.4516 cm²')?.equals(one)).toBe(true)
  })

  test.each([
    ['40 cm²', 4000],
    ['40 cm2', 4000],
    ['40 sq cm', 4000],
    ['2.5 sq m', 2_500_000],
    ['1 m²', 1_000_000],
    ['7 square millimetres', undefined],
    ['7 mm²', 7],
    ['1 sq in', 645.16],
    ['40 cm', undefined],
  ])('%s is read as so many mm²', (text, expected) => {
    expect(readArea(text)?.valueOf()).toBe(expected)
  })

  test('what is printed is never less than it is, and at most a tenth more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 1, max: 5000 }),
        fc.constantFrom('in', 'mm'),
        (w, h, unit) => {
          const area = areaOf({ width: mm(w), height: inches(h, 16) })
          const printed = Number.parseFloat(formatArea(area, unit))
          const more = printed - areaNumber(area, unit)
          expect(more).toBeGreaterThan(-1e-9)
          expect(more).toBeLessThan(0.1)
        },
      ),
    )
  })
})
