import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, plus, shorter, times, zero } from '../../length/length.ts'

/*
 * Lengths along a line at 45° are √2 times a length along the sheet's edge. No root is taken: a mark is compared by its
 * square, so what comes out is exact. Where to begin looking is close enough for the finest ruler.
 */
const scale = 10n ** 30n
/** 1/√2 and √2 to thirty digits, cut off and rounded up. */
const belowHalfRoot = 707106781186547524400844362104n
const aboveRoot = 1414213562373095048801688724210n

/** Whether a square with sides `leg` has a diagonal of at least x. */
export const spans = (leg: Length, x: Length): boolean =>
  !shorter(leg, zero) && leg.mul(leg).mul(2).gte(x.mul(x))

/** The first ruler mark that is at least x/√2 beyond `start`. */
export function markBeyond(start: Length, x: Length, grid: Length): Length {
  // A little less than x/√2, so this mark is at or just before the one we want.
  let mark = fitInside(plus(start, times(part(x, scale), belowHalfRoot)), grid)
  while (!spans(minus(mark, start), x)) mark = plus(mark, grid)
  return mark
}

/** The last ruler mark within leg·√2. */
export function markWithin(leg: Length, grid: Length): Length {
  let mark = fitInside(times(part(leg, scale), aboveRoot), grid)
  while (!spans(leg, mark)) mark = minus(mark, grid)
  return mark
}
