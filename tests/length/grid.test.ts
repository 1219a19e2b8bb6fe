import * as fc from 'fast-check'
import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { formatLength } from '../../src/length/format.ts'
import { fitInside, isOnGrid, mustCover, nearest, share } from '../../src/length/grid.ts'
import { inches, minus, mm, plus, times } from '../../src/length/length.ts'
import { readLength } from '../../src/length/text.ts'

const length = fc
  .tuple(fc.integer({ min: 0, max: 100000 }), fc.integer({ min: 1, max: 640 }))
  .map(([n, d]) => mm(new Fraction(n, d)))
const grid = fc.constantFrom(inches(1, 8), inches(1, 16), inches(1, 32), mm(1), mm(new Fraction(1, 2)))

test('down, nearest and up lie on the grid, in that order, less than a mark apart', () => {
  fc.assert(
    fc.property(length, grid, (x, g) => {
      const [down, near, up] = [fitInside(x, g), nearest(x, g), mustCover(x, g)]
      expect([down, near, up].every((y) => isOnGrid(y, g))).toBe(true)
      expect(down.lte(x) && x.lte(up) && down.lte(near) && near.lte(up)).toBe(true)
      expect(minus(up, down).lte(g)).toBe(true)
      expect(minus(near, x).abs().mul(2).lte(g)).toBe(true)
    }),
  )
})

test('what is shared out adds up again, and the rest is at least as large', () => {
  fc.assert(
    fc.property(length, fc.integer({ min: 1, max: 9 }), grid, (x, count, g) => {
      const whole = fitInside(x, g)
      const { each, rest } = share(whole, count, g)
      expect(plus(times(each, count - 1), rest).equals(whole)).toBe(true)
      expect(isOnGrid(each, g) && isOnGrid(rest, g) && rest.gte(each)).toBe(true)
    }),
  )
})

test('what is printed is read back as the same length', () => {
  fc.assert(
    fc.property(length, (x) => {
      const inch = fitInside(x, inches(1, 64))
      expect(readLength(formatLength(inch, 'in')).equals(inch)).toBe(true)
      const half = fitInside(x, mm(new Fraction(1, 2)))
      expect(readLength(formatLength(half, 'mm')).equals(half)).toBe(true)
    }),
  )
})

test('no text at all makes the reader fail in any but its own way', () => {
  const word = fc.constantFrom(
    '5',
    ' ',
    '7/8',
    '⅞',
    'in',
    'mm',
    'x',
    '×',
    '.',
    '(',
    ')',
    '+',
    '-',
    '*',
    '/',
    'base',
    'as',
    '1/0',
    '"',
  )
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(word).map((w) => w.join('')),
      ),
      (text) => {
        try {
          readLength(text)
        } catch (error) {
          const { start, end } = error as { start: number; end: number }
          expect(start >= 0 && end >= start && end <= text.length, String(error)).toBe(true)
        }
      },
    ),
  )
})
