import { hasFewMarks } from '../../length/grid.ts'
import { type Length, minus, mm, part, plus, type Size, shorter, times, zero } from '../../length/length.ts'
import type { Envelope } from '../card.ts'
import { point } from '../strip.ts'
import type { Stock, Structure } from '../structure.ts'
import { pouch } from './pouch.ts'
import { markBeyond, markWithin, spans } from './slant.ts'

/** A square sheet folded round the card at 45°. */
export interface Diagonal {
  readonly sheet: Size
  /**
   * Where the first corner of the inside lies: this far along the edge from the sheet's corner, `seam` in from the edge.
   * The two scores that meet there run at 45° to the edge.
   */
  readonly score: Length
  readonly seam: Length
  /** What lies between the folds, to the ruler mark below. */
  readonly inside: Size
  /** From fold to fold, to 1/100 mm below. */
  readonly outside: Size
}

/** Far finer than paper is cut. */
const fine = mm(part(mm(1), 100))

/** What an envelope must hold. */
export interface Need {
  /** The shut card with its clearance and its thickness. */
  readonly inside: Size
  /** What both ways must have whatever the ruler does: the card with its clearance, and the card with its thickness. */
  readonly least: Size
  readonly grid: Length
}

/**
 * The square for an inside of w × h whose corners stand `seam` in from the edges: side S = (w + h)/√2 + 2·d, up to the
 * ruler grid, and first score p = h/√2 + d for the shorter edge h, at the next mark. No root is taken: S is the first
 * mark with 2·(S - 2·d)² >= (w + h)², and p the first with 2·(p - d)² >= h². Where the next mark would leave less than
 * the least, the sheet is a mark larger.
 */
export function diagonal({ inside, least, grid }: Need, seam: Length): Diagonal {
  const [[long, short], [leastLong]] = [inOrder(inside), inOrder(least)]
  const score = markBeyond(seam, short, grid)
  let side = markBeyond(times(seam, 2), plus(long, short), grid)
  while (!spans(minus(side, score, seam), leastLong)) side = plus(side, grid)
  const between = (ruler: Length): Size => {
    const width = markWithin(minus(side, score, seam), ruler)
    const height = markWithin(minus(score, seam), ruler)
    return shorter(inside.height, inside.width) ? { width, height } : { width: height, height: width }
  }
  return { sheet: { width: side, height: side }, score, seam, inside: between(grid), outside: between(fine) }
}

/**
 * How far a flap on a long edge of the inside reaches over it, to the next mark: w/2 + d·√2, of which the sheet's side S,
 * the score p and the seam d make (S - p + d)/√2. The inside is (p - d)·√2 high, so the flap passes the opposite edge if
 * S > 3·(p - d).
 */
export const bottomFlap = ({ sheet, score, seam }: Diagonal, grid: Length) => ({
  reach: plus(markWithin(part(plus(minus(sheet.width, score), seam), 2), grid), grid),
  passes: shorter(times(minus(score, seam), 3), sheet.width),
})

/**
 * The widest seam below `seam` with which the bottom flap stays inside, sought mark by mark; undefined when there is
 * none, and on a ruler that is too fine for a hand.
 */
export function widestSeam(need: Need, seam: Length, narrowest: Length): Length | undefined {
  if (!hasFewMarks(seam, need.grid)) return undefined
  for (let x = minus(seam, need.grid); !shorter(x, narrowest); x = minus(x, need.grid))
    if (!bottomFlap(diagonal(need, x), need.grid).passes) return x
  return undefined
}

/** The envelope made from this sheet. */
export const diagonalEnvelope = (diagonal: Diagonal, stock: Stock): Envelope => {
  const { sheet, score, inside, outside } = diagonal
  return {
    make: 'diagonal',
    stock,
    sheet,
    score,
    inside,
    outside,
    scores: [],
    structure: diagonalSheet(diagonal, stock),
    folding: ['left flap', 'right flap', 'bottom flap', 'top flap'],
  }
}

/**
 * The front stands on its corner, and at each corner of it the small triangle up to the sheet's edge is cut away. All
 * points are on the ruler, and a fold at 45° takes them to points on the ruler again, so the folded envelope is exact.
 *
 *      top flap ╱╲ right flap
 *     left flap ╲╱ bottom flap
 */
function diagonalSheet({ sheet, score: p, seam: d }: Diagonal, stock: Stock): Structure {
  const s = sheet.width
  const [before, after] = [minus(p, d), plus(p, d)]
  const [beforeFar, afterFar] = [minus(s, after), minus(s, before)]
  return pouch({
    stock,
    sheet,
    corners: [point(p, d), point(minus(s, d), minus(s, p)), point(minus(s, p), minus(s, d)), point(d, p)],
    flaps: [
      { name: 'bottom flap', beyond: [point(after, zero), point(s, zero), point(s, beforeFar)] },
      { name: 'right flap', beyond: [point(s, afterFar), point(s, s), point(afterFar, s)] },
      { name: 'top flap', beyond: [point(beforeFar, s), point(zero, s), point(zero, after)] },
      { name: 'left flap', beyond: [point(zero, before), point(zero, zero), point(before, zero)] },
    ],
  })
}

const inOrder = ({ width, height }: Size): [Length, Length] =>
  shorter(width, height) ? [height, width] : [width, height]
