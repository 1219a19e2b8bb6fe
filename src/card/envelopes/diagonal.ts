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
}

/**
 * The square for an inside of w × h whose corners stand `seam` in from the edges:
 * score p = h/√2 + d for the shorter edge h, and side S = p + w/√2 + d, both up to the ruler grid so that the
 * clearance is kept. No root is taken: p is the first mark with 2·(p - d)² >= h².
 */
export function diagonal(inside: Size, seam: Length, grid: Length): Diagonal {
  const [long, short] = inOrder(inside)
  const score = legOver(short, seam, grid)
  const side = plus(score, legOver(long, seam, grid))
  return { sheet: { width: side, height: side }, score }
}

/** Whether the bottom flap, which reaches w/2 + d·√2, stays short of the opposite edge. */
export function flapsStayInside(inside: Size, seam: Length): boolean {
  const [long, short] = inOrder(inside)
  const room = minus(short, part(long, 2))
  return !shorter(room, zero) && seam.mul(seam).mul(2).lte(room.mul(room))
}

/** The first ruler mark that is not before x/√2 + d. */
function legOver(x: Length, seam: Length, grid: Length): Length {
  const reaches = (mark: Length) => {
    const leg = minus(mark, seam)
    return !shorter(leg, zero) && leg.mul(leg).mul(2).gte(x.mul(x))
  }
  // 0.707 < 1/√2, so this mark is at or just before the one we want.
  let mark = fitInside(plus(seam, times(part(x, 1000), 707)), grid)
  while (!reaches(mark)) mark = plus(mark, grid)
  return mark
}

const inOrder = ({ width, height }: Size): [Length, Length] =>
  shorter(width, height) ? [height, width] : [width, height]
