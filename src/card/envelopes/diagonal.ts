import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, plus, type Size, shorter, times, zero } from '../../length/length.ts'

/** A square sheet folded round the card at 45°. */
export interface Diagonal {
  readonly sheet: Size
  /**
   * Where the first corner of the inside lies: this far along the edge from the sheet's corner, `seam` in from the edge.
   * The two scores that meet there run at 45° to the edge.
   */
  readonly score: Length
  /** What lies between the folds, to the ruler mark below. */
  readonly inside: Size
}

/**
 * The square for an inside of w × h whose corners stand `seam` in from the edges: side S = (w + h)/√2 + 2·d, up to the
 * ruler grid, and first score p = h/√2 + d for the shorter edge h, at the next mark. No root is taken: S is the first
 * mark with 2·(S - 2·d)² >= (w + h)², and p the first with 2·(p - d)² >= h².
 *
 * @param inside the shut card with its clearance and its thickness.
 * @param least the same without the thickness: what both ways must have whatever the ruler does. Where the next mark
 * would leave less, the sheet is a mark larger.
 */
export function diagonal(inside: Size, least: Size, seam: Length, grid: Length): Diagonal {
  const [[long, short], [leastLong]] = [inOrder(inside), inOrder(least)]
  const score = markBeyond(seam, short, grid)
  let side = markBeyond(times(seam, 2), plus(long, short), grid)
  while (!spans(minus(side, score, seam), leastLong)) side = plus(side, grid)
  const width = diagonalOf(minus(side, score, seam), grid)
  const height = diagonalOf(minus(score, seam), grid)
  const wide = shorter(inside.height, inside.width)
  return {
    sheet: { width: side, height: side },
    score,
    inside: wide ? { width, height } : { width: height, height: width },
  }
}

/** Whether the bottom flap, which reaches w/2 + d·√2, stays short of the opposite edge. */
export function flapsStayInside(inside: Size, seam: Length): boolean {
  const [long, short] = inOrder(inside)
  const room = minus(short, part(long, 2))
  return !shorter(room, zero) && seam.mul(seam).mul(2).lte(room.mul(room))
}

/** Whether a square with sides `leg` has a diagonal of at least x. */
const spans = (leg: Length, x: Length): boolean => !shorter(leg, zero) && leg.mul(leg).mul(2).gte(x.mul(x))

/** The first ruler mark that is at least x/√2 beyond `start`. */
function markBeyond(start: Length, x: Length, grid: Length): Length {
  // 0.70710 < 1/√2, so this mark is at or just before the one we want.
  let mark = fitInside(plus(start, times(part(x, 100000), 70710)), grid)
  while (!spans(minus(mark, start), x)) mark = plus(mark, grid)
  return mark
}

/** The last ruler mark within leg·√2. */
function diagonalOf(leg: Length, grid: Length): Length {
  let mark = fitInside(times(part(leg, 100000), 141422), grid)
  while (!spans(leg, mark)) mark = minus(mark, grid)
  return mark
}

const inOrder = ({ width, height }: Size): [Length, Length] =>
  shorter(width, height) ? [height, width] : [width, height]
