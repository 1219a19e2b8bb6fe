import type Fraction from 'fraction.js'
import { inches, type Length, minus, mm, over, part, times, type Unit } from './length.ts'

/** What a hand can cut, unless the lesson says otherwise. Common practice, no source. */
export const usualGrid = { in: inches(1, 16), mm: mm(1) } as const satisfies Record<Unit, Length>

/** Which way a parameter goes when it is put on the ruler grid. */
export type Rounding = 'down' | 'up' | 'nearest'

/** What must fit inside: the longest length on the grid that is not longer. */
export const fitInside = (x: Length, grid: Length): Length => times(grid, over(x, grid).floor())
/** What must cover, and a gap, which never shrinks: the shortest length on the grid that is not shorter. */
export const mustCover = (x: Length, grid: Length): Length => times(grid, over(x, grid).ceil())
/** The closest length on the grid; exactly half way goes to the even mark (NIST SP 811, B.7.1). */
export const nearest = (x: Length, grid: Length): Length => times(grid, halfToEven(over(x, grid)))

const round = { down: fitInside, up: mustCover, nearest } as const

/** `x` put on the grid in the named direction. */
export const onGrid = (x: Length, grid: Length, direction: Rounding): Length => round[direction](x, grid)

/** Whether a ruler with this grid has a mark at `x`. */
export const isOnGrid = (x: Length, grid: Length): boolean => over(x, grid).d === 1n

/** Whether so long a ruler has few enough marks to look at each: on one that is finer than any hand needs, it has not. */
export const hasFewMarks = (whole: Length, grid: Length): boolean => over(whole, grid).lte(10_000)

/**
 * `whole` shared out over `count` parts that all lie on the grid.
 *
 * @returns the part that all but one have, and the rest, which a named panel takes. They add up to `whole`.
 */
export function share(whole: Length, count: number, grid: Length): { each: Length; rest: Length } {
  const each = fitInside(part(whole, count), grid)
  return { each, rest: minus(whole, times(each, count - 1)) }
}

function halfToEven(x: Fraction): Fraction {
  const down = x.floor()
  const left = x.sub(down)
  if (left.equals(0.5)) return down.divisible(2) ? down : down.add(1)
  return left.gt(0.5) ? down.add(1) : down
}
