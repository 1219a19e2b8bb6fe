import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, plus, shorter, times, zero } from '../../length/length.ts'

/*
 * Lengths along a line at 45° are √2 times a length along the sheet's edge. No root is taken: a mark is compared by its
 * square, so what comes out is exact.
 */

/** Whether a square with sides `leg` has a diagonal of at least x. */
export const spans = (leg: Length, x: Length): boolean =>
  !shorter(leg, zero) && leg.mul(leg).mul(2).gte(x.mul(x))

/** The first ruler mark that is at least x/√2 beyond `start`. */
export function markBeyond(start: Length, x: Length, grid: Length): Length {
  // 0.70710 < 1/√2, so this mark is at or just before the one we want.
  let mark = fitInside(plus(start, times(part(x, 100000), 70710)), grid)
  while (!spans(minus(mark, start), x)) mark = plus(mark, grid)
  return mark
}

/** The last ruler mark within leg·√2. */
export function markWithin(leg: Length, grid: Length): Length {
  let mark = fitInside(times(part(leg, 100000), 141422), grid)
  while (!spans(leg, mark)) mark = minus(mark, grid)
  return mark
}
