import Fraction from 'fraction.js'
import { type Length, mm } from '../length/length.ts'

/**
 * Whole numbers stand for lengths while folding: each length is so many of a unit that divides all of them. That is as
 * exact as fractions and a hundred times as quick.
 */

/** How many of the largest unit that divides all of `lengths` make a millimetre. */
export function unitsPerMm(lengths: Iterable<Length>): bigint {
  let all = 1n
  for (const { d } of lengths) if (all % d !== 0n) all = (all / greatestDivisor(all, d)) * d
  return all
}

/** `x` counted in units of 1/`perMm` mm. */
export const countOf = (x: Length, perMm: bigint): number => Number(x.s * x.n * (perMm / x.d))

/**
 * The length of `n` units of 1/`perMm` mm. What is not a whole number of them comes from roots and sines: it is that
 * many if it is as good as whole, else it is taken to a thousandth of a unit.
 */
export function lengthOf(n: number, perMm: bigint): Length {
  const near = Math.round(n)
  return Math.abs(n - near) < 1e-5
    ? mm(new Fraction(BigInt(near), perMm))
    : mm(new Fraction(BigInt(Math.round(n * 1000)), perMm * 1000n))
}

/** Largest number that sums and products of coordinates stay exact for. */
export const largestCount = 2 ** 42

export function greatestDivisor(a: bigint, b: bigint): bigint {
  while (b !== 0n) [a, b] = [b, a % b]
  return a
}

/** The shortest whole vector in the direction of (x, y). */
export function primitive(x: number, y: number): readonly [number, number] {
  let [a, b] = [Math.abs(x), Math.abs(y)]
  while (b !== 0) [a, b] = [b, a % b]
  return a === 0 ? [0, 0] : [x / a, y / a]
}
