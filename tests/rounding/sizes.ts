import * as fc from 'fast-check'
import Fraction from 'fraction.js'
import { inches, type Length, mm, type Size, type Unit } from '../../src/length/length.ts'

/** From 2 1/2 in to 12 in, on the marks of a ruler and off them, in inches and in millimetres. */
const side: fc.Arbitrary<Length> = fc.oneof(
  fc.integer({ min: 10, max: 48 }).map((n) => inches(n, 4)),
  fc.integer({ min: 40, max: 192 }).map((n) => inches(n, 16)),
  fc.integer({ min: 64, max: 304 }).map((n) => mm(n)),
  fc.integer({ min: 635, max: 3048 }).map((n) => mm(new Fraction(n, 10))),
  fc.integer({ min: 18, max: 84 }).map((n) => inches(n, 7)),
)

/** Sizes of shut cards, portrait, landscape and square. */
export const anySize: fc.Arbitrary<Size> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ width: side, height: side }) },
  { weight: 1, arbitrary: side.map((x) => ({ width: x, height: x })) },
)

/** Mostly square: for what is made square only, and says so of others. */
export const squareSize: fc.Arbitrary<Size> = fc.oneof(
  { weight: 1, arbitrary: anySize },
  { weight: 6, arbitrary: side.map((x) => ({ width: x, height: x })) },
)

/** The rulers of each unit. */
export const rulers = {
  in: [inches(1, 8), inches(1, 16), inches(1, 32)],
  mm: [mm(1), mm(new Fraction(1, 2))],
} as const satisfies Record<Unit, readonly Length[]>
