import { toHtml } from 'hast-util-to-html'
import type { Card, Envelope } from '../card/card.ts'
import { hingesOf, type Score, scoresOf } from '../card/scores.ts'
import type { Fold, Piece, Structure } from '../card/structure.ts'
import { outlineScale, outlineSvg } from '../draw/outline.ts'
import { makePalette } from '../draw/stock.ts'
import type { Length } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import { type Html, html } from './html-text.ts'
import { measureWithin, sizeHtml } from './measure-html.ts'

/** Scores of one kind on a piece. */
export interface ScoresView {
  readonly fold: Fold
  readonly at: Html
  /** `left` or `bottom`: the edge they are measured from, inside up. */
  readonly from: 'left' | 'bottom'
  /** Not straight across: only a figure shows where they are. */
  readonly slanted: boolean
}

/** One row of the cutting table. */
export interface PieceView {
  readonly name: string
  readonly stock: string
  readonly count: number
  readonly size: Html
  readonly outline: Html
  readonly scores: readonly ScoresView[]
  /** Its pattern has a top. */
  readonly upright: boolean
  /** It has slits or windows. */
  readonly cuts: boolean
}

/** The rows of the cutting table of a card, in the order of its pieces, and last the sheet for its envelope. */
export function piecesView(card: Card, wording: Wording): PieceView[] {
  const { structure } = card
  const envelope = card.envelope && sheetOf(card.envelope)
  const pieces = [...structure.pieces, ...(envelope ? [envelope] : [])]
  // The sheet for the envelope is larger than all else: beside it nothing would be seen of a base.
  const scaleOf = (piece: Piece): number => outlineScale(piece === envelope ? [piece] : structure.pieces)
  const palette = makePalette({ ...structure, pieces })
  return pieces.map((piece) => ({
    name: wording.name(piece.name),
    stock: wording.name(piece.stock.name),
    count: piece.count,
    size: sizeHtml(piece.size, wording),
    outline: html(
      toHtml(outlineSvg(piece, structure, scaleOf(piece), palette(piece.stock).tint), { space: 'svg' }),
    ),
    scores: scoresView(piece, structure, wording),
    upright: piece.stock.direction === 'upright',
    cuts: piece.cuts.length > 0 || structure.plates.some((p) => p.piece === piece.name && p.holes.length > 0),
  }))
}

/** An envelope is scored on the slant or on several edges: how stands in its own steps. */
const sheetOf = ({ stock, sheet }: Envelope): Piece => ({
  name: 'envelope',
  kind: 'loose',
  stock,
  count: 1,
  size: sheet,
  cuts: [],
})

function scoresView(piece: Piece, structure: Structure, wording: Wording): ScoresView[] {
  const own = hingesOf(structure, piece.name)
  return (['valley', 'mountain'] as const).flatMap((fold) => {
    const ofFold = own.filter((hinge) => hinge.fold === fold)
    const scores = scoresOf(ofFold)
    const view = (along: Score['along'], from: ScoresView['from']): ScoresView[] => {
      const at = distinct(scores.filter((score) => score.along === along).map((score) => score.at))
      return at.length === 0 ? [] : [{ fold, from, at: measureWithin(wording.lengths(at)), slanted: false }]
    }
    const slanted = { fold, from: 'left', at: html(''), slanted: true } as const
    return [
      ...view('width', 'left'),
      ...view('height', 'bottom'),
      ...(scores.length < ofFold.length ? [slanted] : []),
    ]
  })
}

/** Marks in their order, each once. */
const distinct = (marks: readonly Length[]): Length[] => marks.filter((x, i) => !marks[i - 1]?.equals(x))
