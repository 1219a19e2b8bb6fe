import { type Demands, equationsAt } from './equations.ts'
import { settle } from './least-squares.ts'
import type { Linkage } from './linkage.ts'

/** Bending the wrong way by less than this, in radians, is an error of rounding near a flat or shut crease. */
const wrongWay = 1e-7

/** Folds near `guess` that meet the demands and bend the right way, moving only the joints in `moving`. */
export function solveFolds(
  linkage: Linkage,
  moving: readonly number[],
  guess: readonly number[],
  demands: Demands,
): number[] | undefined {
  const all = (x: readonly number[]): number[] => {
    const folds = [...guess]
    for (const [i, joint] of moving.entries()) folds[joint] = x[i] ?? 0
    return folds
  }
  const solved = settle(
    (x) => {
      const { residual, jacobian } = equationsAt(linkage, all(x), demands)
      const rows = jacobian.map((row) => moving.map((joint) => row[joint] ?? 0))
      const beyond = x.map(wrongBy)
      for (const [i, by] of beyond.entries()) if (by !== 0) rows.push(x.map((_, k) => (k === i ? 1 : 0)))
      return { residual: [...residual, ...beyond.filter((by) => by !== 0)], jacobian: rows }
    },
    moving.map((joint) => guess[joint] ?? 0),
  )
  return solved && all(solved)
}

/** By how much a crease bends against its direction (less than zero), or further than shut. */
const wrongBy = (fold: number): number =>
  Math.min(0, fold + wrongWay) + Math.max(0, fold - Math.PI - wrongWay)

/** The largest change of one fold. */
export const farthest = (x: readonly number[], y: readonly number[]): number =>
  x.reduce((most, xi, i) => Math.max(most, Math.abs(xi - (y[i] ?? 0))), 0)

/** `share` of the way from `x` to `y`; beyond either end for shares outside 0 to 1. */
export const blend = (x: readonly number[], y: readonly number[], share: number): number[] =>
  x.map((xi, i) => xi + share * ((y[i] ?? xi) - xi))
