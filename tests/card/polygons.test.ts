import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { rectangle } from '../../src/card/strip.ts'
import type { Polygon } from '../../src/card/structure.ts'
import { mm } from '../../src/length/length.ts'
import { areaOf, liesOn, sharedArea } from './polygons.ts'

const at = (x: number, y: number) => ({ x: mm(x), y: mm(y) })
const box = (x: number, y: number, w: number, h: number) =>
  rectangle({ width: mm(w), height: mm(h) }, at(x, y))
/** A band with a notch in its right side: 10 × 10 less 4 × 4. */
const notched: Polygon = [
  at(0, 0),
  at(10, 0),
  at(10, 3),
  at(6, 3),
  at(6, 7),
  at(10, 7),
  at(10, 10),
  at(0, 10),
]

test('areas, of outlines with a notch too', () => {
  expect(areaOf(box(2, 3, 4, 5))).toBeCloseTo(20, 9)
  expect(areaOf(notched)).toBeCloseTo(84, 9)
})

test('what fills a notch shares nothing with it, and what goes a little too far shares that', () => {
  expect(sharedArea(notched, box(6, 3, 4, 4))).toBeCloseTo(0, 9)
  expect(sharedArea(notched, box(5.75, 3, 4.25, 4))).toBeCloseTo(1, 9)
  expect(sharedArea(box(6, 3, 4, 4), [at(0, 0), at(8, 0), at(8, 8)])).toBeCloseTo(7.5, 9)
})

test('two boxes share the product of what their sides share', () => {
  const side = fc.integer({ min: 1, max: 30 })
  fc.assert(
    fc.property(side, side, side, side, side, (x, y, w, h, v) => {
      const across = Math.max(0, Math.min(20, x + w) - Math.max(5, x))
      const up = Math.max(0, Math.min(5 + v, y + h) - Math.max(5, y))
      expect(sharedArea(box(5, 5, 15, v), box(x, y, w, h))).toBeCloseTo(across * up, 6)
      expect(sharedArea(box(x, y, w, h), notched)).toBeCloseTo(
        overlap(x, w, 0, 10) * overlap(y, h, 0, 10) - overlap(x, w, 6, 4) * overlap(y, h, 3, 4),
        6,
      )
    }),
  )
})

const overlap = (a: number, w: number, b: number, v: number) =>
  Math.max(0, Math.min(a + w, b + v) - Math.max(a, b))

test('a point lies on a line only between its ends', () => {
  const line = { from: at(0, 0), to: at(4, 2) }
  expect([liesOn([2, 1], line), liesOn([2, 1.01], line), liesOn([6, 3], line)]).toEqual([true, false, false])
})
