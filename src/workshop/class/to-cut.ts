import type { Card } from '../../card/card.ts'
import { scoresOfPiece } from '../../card/scores.ts'
import type { Piece, Structure } from '../../card/structure.ts'
import { groupBy } from '../../length/group-by.ts'
import { minus, plus, type Size, zero } from '../../length/length.ts'
import type { Taught } from './taught.ts'

/** A piece that the whole class needs so many of. */
export interface PieceToCut {
  readonly lesson: string
  /** Name of its card, where a lesson has several. */
  readonly card?: string
  readonly name: string
  readonly size: Size
  readonly count: number
  readonly stock: string
  /** Its pattern has a top. */
  readonly upright: boolean
  /** Which way most of its scores run, if it has any: fibres run along them, so that no fold cracks. */
  readonly scored?: 'width' | 'height'
}

/** Everything that is cut for a class, by stock, in the order in which the lessons first use each. */
export const toCut = (lessons: readonly Taught[]): Map<string, PieceToCut[]> =>
  groupBy(lessons.flatMap(piecesOf), ({ stock }) => stock)

function piecesOf({ lesson, kits, taken }: Taught): PieceToCut[] {
  const several = lesson.cards.length > 1
  return lesson.cards
    .flatMap(({ card }) =>
      sheetsOf(card).flatMap(({ piece, structure }) => {
        const takes = taken.get(piece.stock.name) ?? [{ stock: piece.stock.name, kits }]
        const scored = mainScoring(structure, piece)
        return takes.map(
          (take): PieceToCut => ({
            lesson: lesson.frontMatter.title,
            ...(several && { card: card.name }),
            name: piece.name,
            size: piece.size,
            count: piece.count * take.kits,
            stock: take.stock,
            upright: piece.stock.direction === 'upright',
            ...(scored && { scored }),
          }),
        )
      }),
    )
    .filter(({ count }) => count > 0)
}

/** Which pieces of a stock have a top that must stay up. */
export function uprightIn(lessons: readonly Taught[]): (stock: string, piece: string) => boolean {
  const uprights = new Set(
    [...toCut(lessons).values()].flat().flatMap((p) => (p.upright ? [`${p.stock}\n${p.name}`] : [])),
  )
  return (stock, piece) => uprights.has(`${stock}\n${piece}`)
}

/** The pieces of a card and the sheet of its envelope, each with the structure that its scores are in. */
export const sheetsOf = ({ structure, envelope }: Card): { piece: Piece; structure: Structure }[] => [
  ...structure.pieces.map((piece) => ({ piece, structure })),
  ...(envelope ? envelope.structure.pieces.map((piece) => ({ piece, structure: envelope.structure })) : []),
]

/** Along which side more of the length of all scores runs: a mark along the width is a line up the height. */
function mainScoring(structure: Structure, { name }: Piece): 'width' | 'height' | undefined {
  const scores = scoresOfPiece(structure, name)
  const along = (side: 'width' | 'height') =>
    plus(zero, ...scores.filter((score) => score.along === side).map(({ from, to }) => minus(to, from)))
  const [lines, levels] = [along('width'), along('height')]
  if (lines.equals(levels)) return undefined
  return lines.gt(levels) ? 'height' : 'width'
}
