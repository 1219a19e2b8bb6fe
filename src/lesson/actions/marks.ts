import type { Card } from '../../card/card.ts'
import { hingesOf, scoresOf } from '../../card/scores.ts'
import { slantsOf } from '../../card/slants.ts'
import type { Fold } from '../../card/structure.ts'
import { type Length, same } from '../../length/length.ts'

/** A score of a piece that a lesson must say: lines at one mark are one; a slanting one has no mark. */
export interface Mark {
  readonly along: 'width' | 'height' | 'slant'
  /** From the left edge (`along: width`) or the lower edge (`along: height`). */
  readonly at?: Length
  readonly folds: readonly Fold[]
}

/** The marks of a piece, in the order of `{piece.scores}`, and its slanting scores. */
export function marksOf({ structure }: Card, piece: string): Mark[] {
  const hinges = hingesOf(structure, piece)
  const all = scoresOf(hinges)
  const sameMark = (a: (typeof all)[number], b: (typeof all)[number]): boolean =>
    a.along === b.along && same(a.at, b.at)
  const straight = all.filter((score, i) => all.findIndex((other) => sameMark(score, other)) === i)
  return [
    ...straight.map(
      (score): Mark => ({
        along: score.along,
        at: score.at,
        folds: all.filter((other) => sameMark(score, other)).map(({ fold }) => fold),
      }),
    ),
    ...slantsOf(hinges).map(({ fold }): Mark => ({ along: 'slant', folds: [fold] })),
  ]
}

/** Parts of a piece that say scores, and which of them. */
export const scoreParts: ReadonlyMap<string, (mark: Mark) => boolean> = new Map([
  ['scores', ({ along }: Mark) => along !== 'slant'],
  ['valleys', ({ along, folds }: Mark) => along !== 'slant' && folds.includes('valley')],
  ['mountains', ({ along, folds }: Mark) => along !== 'slant' && folds.includes('mountain')],
  ['uprights', ({ along }: Mark) => along === 'width'],
  ['levels', ({ along }: Mark) => along === 'height'],
  ['slants', ({ along }: Mark) => along === 'slant'],
])
