import fc from 'fast-check'
import { expect, test } from 'vitest'
import { num } from '../../src/draw/num.ts'

const written = (value: number, digits: number) => String(Number(value.toFixed(digits))).replace(/^-0$/, '0')

test('a number is written as the language itself rounds it, also half way between two', () => {
  const digits = fc.integer({ min: 0, max: 4 })
  const anything = fc.double({ min: -1e12, max: 1e12, noNaN: true })
  const halves = fc.integer({ min: -200_000, max: 200_000 })
  fc.assert(fc.property(anything, digits, (value, d) => num(value, d) === written(value, d)))
  fc.assert(
    fc.property(halves, digits, (half, d) => {
      const value = half / 2 / 10 ** d
      return num(value, d) === written(value, d)
    }),
  )
  expect([num(1.0005), num(2.5, 0), num(-0.0001), num(-0)]).toEqual(['1', '3', '0', '0'])
})

test('what no drawing can hold is refused', () => {
  expect(() => num(Number.NaN)).toThrow('Cannot write `NaN`, expected a finite number')
})
