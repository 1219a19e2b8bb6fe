import * as fc from 'fast-check'
import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { diagonal, flapsStayInside } from '../../src/card/envelopes/diagonal.ts'
import { inches, mm, toMm } from '../../src/length/length.ts'
import { cardOf, measure } from './block.ts'

const [seam, grid] = [inches(3, 8), inches(1, 16)]

/** The geometry, worked out here with floating-point roots: the square's side is (w + h)/√2 + 2·d. */
test('the diagonal sheet is on the next mark, or the one after it where the ruler would take the clearance', () => {
  const size = fc.integer({ min: 60, max: 300 })
  fc.assert(
    fc.property(size, size, fc.integer({ min: 0, max: 30 }), (w, h, tenths) => {
      const [thick, least] = [new Fraction(tenths, 10), { width: mm(w), height: mm(h) }]
      const all = { width: mm(thick.add(w)), height: mm(thick.add(h)) }
      const { sheet, score, inside } = diagonal(all, least, seam, grid)
      const [d, g, side, p] = [seam, grid, sheet.width, score].map(toMm) as [number, number, number, number]
      const exact = (w + h + tenths / 5) / Math.SQRT2 + 2 * d
      expect(side).toBeGreaterThanOrEqual(exact - 1e-9)
      expect(side).toBeLessThan(exact + 2 * g)
      const [short, long] = [(p - d) * Math.SQRT2, (side - p - d) * Math.SQRT2]
      expect(short).toBeGreaterThanOrEqual(Math.min(w, h) + tenths / 10 - 1e-9)
      expect(long).toBeGreaterThanOrEqual(Math.max(w, h) - 1e-9)
      const [across, up] = w > h ? [long, short] : [short, long]
      expect(toMm(inside.width)).toBeCloseTo(Math.floor(across / g + 1e-9) * g, 6)
      expect(toMm(inside.height)).toBeCloseTo(Math.floor(up / g + 1e-9) * g, 6)
    }),
  )
})

test.each([
  [7.25, 5.25, true],
  [8.25, 6.25, true],
  [9.25, 3.25, false],
  [6, 6, true],
])('the flaps of %d × %d in stay inside: %s', (w, h, expected) => {
  expect(w / 2 + 0.375 * Math.SQRT2 <= h).toBe(expected)
  expect(flapsStayInside({ width: inches(w * 4, 4), height: inches(h * 4, 4) }, seam)).toBe(expected)
})

test('the thickness is taken in on both edges', () => {
  const text = 'fold: side\nclosed: 5 x 7 in\nenvelope: {make: side seam, clearance: 1/4 in}'
  expect(measure(cardOf(text), 'envelope.inside')).toBe('5 1/4 × 7 1/4 in')
  expect(measure(cardOf(text, { thickness: () => inches(1, 8) }), 'envelope.inside')).toBe('5 3/8 × 7 3/8 in')
  const diagonal = text.replace('side seam', 'diagonal')
  // By hand: (5 3/8 + 7 3/8)/√2 + 2 · 3/8 = 9.766, so the next mark is 9 13/16.
  expect(measure(cardOf(diagonal, { thickness: () => inches(1, 8) }), 'envelope.width')).toBe('9 13/16 in')
})

test('a side seam: front, back and flaps add up to the sheet', () => {
  const card = cardOf(
    'fold: side\nclosed: 9 x 3 in\nenvelope: {make: side seam, clearance: 1/4 in, flap: 1/2 in}',
  )
  expect([measure(card, 'envelope.inside'), measure(card, 'envelope.size')]).toEqual([
    '9 1/4 × 3 1/4 in',
    '10 1/4 × 7 in',
  ])
})
