import { type Size, same, zero } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import { hingesOf, sideToScore } from './scores.ts'
import type { Fold, Hinge, Point, Side, Structure } from './structure.ts'

/** A score line that is neither upright nor level: a hand marks both of its ends and joins them. */
export interface Slant {
  /** Its left end, and its right one. */
  readonly from: Point
  readonly to: Point
  readonly fold: Fold
  /** The side to score: the outside of the bend. */
  readonly side: Side
}

/** The slanting score lines among these hinges, from left to right. */
export function slantsOf(hinges: readonly Hinge[]): Slant[] {
  const slants = hinges.flatMap(({ line: { from, to }, fold }): Slant[] => {
    if (same(from.x, to.x) || same(from.y, to.y)) return []
    const [left, right] = from.x.lt(to.x) ? [from, to] : [to, from]
    return [{ from: left, to: right, fold, side: sideToScore(fold) }]
  })
  return slants.sort((a, b) => a.from.x.compare(b.from.x) || a.from.y.compare(b.from.y))
}

/** The slanting score lines of one piece, from left to right. */
export const slantsOfPiece = (structure: Pick<Structure, 'plates' | 'hinges'>, piece: string): Slant[] =>
  slantsOf(hingesOf(structure, piece))

/**
 * Where a slanting score runs, as two marks: `from the left edge at 2 in to the top edge at 3 in`. A mark on an upright
 * edge is measured from the lower edge, one on a level edge from the left edge.
 *
 * @param size of the piece.
 */
export const slantText = ({ from, to }: Slant, size: Size, wording: Wording): string =>
  wording.say('figures.from-to', {
    from: markText(from, size, wording),
    to: markText(to, size, wording),
  })

/** A point of a piece as a hand finds it: a corner, a mark on an edge, or so far across and so far up. */
export function markText({ x, y }: Point, { width, height }: Size, { say, length }: Wording): string {
  const upright = same(x, zero) ? 'left' : same(x, width) ? 'right' : undefined
  const level = same(y, zero) ? 'lower' : same(y, height) ? 'top' : undefined
  if (upright && level) return say('figures.corner', { level, upright })
  if (upright) return say('figures.on-edge', { edge: upright, at: length(y) })
  if (level) return say('figures.on-edge', { edge: level, at: length(x) })
  return say('figures.point', { across: length(x), up: length(y) })
}
