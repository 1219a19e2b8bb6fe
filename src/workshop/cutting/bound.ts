import Fraction from 'fraction.js'
import type { Goal } from './master.ts'
import type { Problem } from './problem.ts'

/** What one piece of each kind is worth, and what one sheet less would be, in whole parts of a sheet. */
export interface Prices {
  readonly values: readonly number[]
  readonly sheet: number
}

/** Parts in which prices are told: as whole numbers they add up exactly. */
export const parts = 2 ** 26

/** Prices of the program's rows in whole parts, rounded down, which leaves every bound valid. */
export const pricesOf = (duals: readonly number[], { counts, shapes }: Problem): Prices => ({
  values: counts.map((_, kind) => Math.max(0, Math.floor((duals[kind] ?? 0) * parts))),
  sheet: Math.max(0, Math.floor(-(duals[counts.length + shapes.length] ?? 0) * parts)),
})

/**
 * No plan that cuts all pieces costs less than this: Farley's bound (A. A. Farley, A note on bounding a class of linear
 * programming problems, including cutting stock problems, Oper. Res. 38 (1990) 922–923), with what limited supplies
 * could save taken off (Lagrange). It holds for any prices, whether or not they are the best, and is exact.
 *
 * @param ceilings no pattern of each shape is worth more than this at the prices.
 */
export function lowerBound(
  { counts, supplies }: Problem,
  { costs, most }: Goal,
  { values, sheet }: Prices,
  ceilings: readonly number[],
): Fraction {
  const dear = supplies.map(
    ({ counted }, i) => (costs[i] ?? 0) * parts + (counted && most !== undefined ? sheet : 0),
  )
  const ceiling = (i: number): Fraction => new Fraction(ceilings[supplies[i]?.shape ?? 0] ?? 0)
  let shrink = new Fraction(1)
  for (const [i, { limit }] of supplies.entries()) {
    if (Number.isFinite(limit)) continue
    if (ceiling(i).equals(0)) continue
    if (dear[i] === 0) return new Fraction(0)
    const over = ceiling(i).div(dear[i] ?? 1)
    if (over.gt(shrink)) shrink = over
  }
  let bound = new Fraction(0)
  for (const [kind, count] of counts.entries())
    bound = bound.add(new Fraction(values[kind] ?? 0).mul(count).div(shrink))
  if (most !== undefined) bound = bound.sub(new Fraction(sheet).mul(most))
  for (const [i, { limit }] of supplies.entries()) {
    if (!Number.isFinite(limit)) continue
    const saved = ceiling(i)
      .div(shrink)
      .sub(dear[i] ?? 0)
    if (saved.gt(0)) bound = bound.sub(saved.mul(limit))
  }
  return bound.div(parts)
}
