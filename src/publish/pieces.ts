import { toHtml } from 'hast-util-to-html'
import type { Card, Envelope } from '../card/card.ts'
import type { Fold, Piece, Structure } from '../card/structure.ts'
import { outlineScale, outlineSvg } from '../draw/outline.ts'
import { makePalette } from '../draw/stock.ts'
import type { Length, Unit } from '../length/length.ts'
import { type Html, html } from './html-text.ts'
import { lengthsHtml, sizeHtml } from './measure-html.ts'

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
export function piecesView(card: Card, unit: Unit): PieceView[] {
  const { structure } = card
  const envelope = card.envelope && sheetOf(card.envelope)
  const pieces = [...structure.pieces, ...(envelope ? [envelope] : [])]
  // The sheet for the envelope is larger than all else: beside it nothing would be seen of a base.
  const scaleOf = (piece: Piece): number => outlineScale(piece === envelope ? [piece] : structure.pieces)
  const palette = makePalette({ ...structure, pieces })
  return pieces.map((piece) => ({
    name: piece.name,
    stock: piece.stock.name,
    count: piece.count,
    size: sizeHtml(piece.size, unit),
    outline: html(
      toHtml(outlineSvg(piece, structure, scaleOf(piece), palette.paint(piece.stock).tint), { space: 'svg' }),
    ),
    scores: scoresOf(piece, structure, unit),
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

function scoresOf(piece: Piece, { plates, hinges }: Structure, unit: Unit): ScoresView[] {
  const names = new Set(plates.filter((plate) => plate.piece === piece.name).map((plate) => plate.name))
  const own = hinges.filter(({ between }) => between.some((name) => names.has(name)))
  return (['valley', 'mountain'] as const).flatMap((fold) => {
    const lines = own.filter((hinge) => hinge.fold === fold).map((hinge) => hinge.line)
    const upright = lines.filter(({ from, to }) => from.x.equals(to.x))
    const level = lines.filter(({ from, to }) => from.y.equals(to.y))
    const view = (from: 'left' | 'bottom', at: readonly Length[]): ScoresView[] =>
      at.length === 0 ? [] : [{ fold, from, at: lengthsHtml(distinct(at), unit), slanted: false }]
    return [
      ...view(
        'left',
        upright.map(({ from }) => from.x),
      ),
      ...view(
        'bottom',
        level.map(({ from }) => from.y),
      ),
      ...(upright.length + level.length < lines.length
        ? [{ fold, from: 'left' as const, at: html(''), slanted: true }]
        : []),
    ]
  })
}

/** From the edge outwards, each once. */
const distinct = (lengths: readonly Length[]): Length[] =>
  [...lengths].sort((a, b) => a.compare(b)).filter((x, i, all) => !all[i - 1]?.equals(x))
