import { type Length, larger, same, smaller } from '../length/length.ts'
import type { Fold, Hinge, Side, Structure } from './structure.ts'

/** A score line of a piece as a hand makes it: a mark along one edge, and a line straight across from it. */
export interface Score {
  /** From the piece's left edge (`along: width`) or its lower edge (`along: height`). */
  readonly at: Length
  readonly along: 'width' | 'height'
  /** Where the line starts and ends across. */
  readonly from: Length
  readonly to: Length
  readonly fold: Fold
  /** The side to score: the outside of the bend. */
  readonly side: Side
}

/** The side to score for a fold: a groove belongs on the outside of the bend. */
export const sideToScore = (fold: Fold): Side => (fold === 'mountain' ? 'face' : 'back')

/** The score lines of a piece, in the order of their marks. Lines that are neither upright nor level have none. */
export function scoresOf(hinges: readonly Hinge[]): Score[] {
  const scores = hinges.flatMap(({ line: { from, to }, fold }): Score[] => {
    const score = (along: Score['along'], at: Length, one: Length, other: Length): Score[] => [
      { at, along, from: smaller(one, other), to: larger(one, other), fold, side: sideToScore(fold) },
    ]
    if (same(from.x, to.x)) return score('width', from.x, from.y, to.y)
    return same(from.y, to.y) ? score('height', from.y, from.x, to.x) : []
  })
  return scores.sort((a, b) => a.at.compare(b.at))
}

/** The hinges of one piece. Of several pieces that are cut alike each line stands once. */
export function hingesOf({ plates, hinges }: Pick<Structure, 'plates' | 'hinges'>, piece: string): Hinge[] {
  const own = new Set(plates.filter((plate) => plate.piece === piece).map((plate) => plate.name))
  const lines = new Map<string, Hinge>()
  for (const hinge of hinges.filter(({ between }) => own.has(between[0]))) {
    const { from, to } = hinge.line
    const line = [from.x, from.y, to.x, to.y].map((x) => x.toFraction()).join()
    if (!lines.has(line)) lines.set(line, hinge)
  }
  return [...lines.values()]
}

/** The score lines of one piece, in the order of their marks. */
export const scoresOfPiece = (structure: Pick<Structure, 'plates' | 'hinges'>, piece: string): Score[] =>
  scoresOf(hingesOf(structure, piece))
