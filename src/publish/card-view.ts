import type { Card, Envelope, Lettering } from '../card/card.ts'
import type { Proof } from '../fold/pose.ts'
import { formatBare, formatLength, formatSize } from '../length/format.ts'
import { nearest } from '../length/grid.ts'
import { type Length, mm, type Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { Html } from './html-text.ts'
import { lengthHtml, lengthsHtml, measureHtml, sizeHtml } from './measure-html.ts'
import { type PieceView, piecesView } from './pieces.ts'

/** Where the letters of a word go on their strip. */
export interface LetteringView {
  readonly on: string
  readonly gap: Html
  /** The left edge of each letter, from the left end of the strip; the unit stands in `unit`. */
  readonly letters: readonly { readonly letter: string; readonly at: Html }[]
  readonly unit: string
}

/** The envelope that a card goes into. */
export interface EnvelopeView {
  readonly make: Envelope['make']
  readonly stock: string
  readonly sheet: Html
  /** Where the first score meets the edge, from the corner: of a diagonal one. */
  readonly score: Html | null
  readonly scores: readonly { readonly from: 'left' | 'bottom'; readonly at: Html }[]
  readonly inside: Html
}

/** One card of the lesson: what it comes to, and what it is cut from. */
export interface CardView {
  readonly name: string
  readonly shut: Html
  /** Width × height × depth, to the nearest mark of the ruler. */
  readonly standing: Html | null
  readonly pieces: readonly PieceView[]
  readonly lettering: readonly LetteringView[]
  readonly envelope: EnvelopeView | null
}

export function cardView({ card, proof }: ProvenCard, unit: Unit, grid: Length): CardView {
  return {
    name: card.name,
    shut: measureHtml(`${shutText(card, unit)}${depthOf(proof, unit, grid)}`),
    standing: standingOf(proof, unit, grid),
    pieces: piecesView(card, unit),
    lettering: card.lettering.map((lettering) => letteringView(lettering, unit)),
    envelope: card.envelope ? envelopeView(card.envelope, unit) : null,
  }
}

/** The size of the shut card as plain text, for the foot of the pages. */
export const shutText = ({ closed }: Card, unit: Unit): string => formatSize(closed, unit)

/** A box is as deep as it is, however flat its sheets are. */
const depthOf = ({ closed }: Proof, unit: Unit, grid: Length): string =>
  closed?.isFlat === false ? `, ${formatLength(nearest(closed.thickness, grid), unit)} deep` : ''

function standingOf({ standing }: Proof, unit: Unit, grid: Length): Html | null {
  if (!standing) return null
  const parts = [standing.width, standing.height, standing.depth].map((x) =>
    formatBare(nearest(mm(Math.round(x * 1000) / 1000), grid), unit),
  )
  return measureHtml(`${parts.join(' × ')} ${unit}`)
}

const letteringView = ({ on, gap, letters, marks }: Lettering, unit: Unit): LetteringView => ({
  on,
  gap: lengthHtml(gap, unit),
  letters: marks.map((mark, i) => ({ letter: letters[i] ?? '', at: measureHtml(formatBare(mark, unit)) })),
  unit: unit === 'in' ? 'inches' : 'millimetres',
})

const envelopeView = ({ make, stock, sheet, score, scores, inside }: Envelope, unit: Unit): EnvelopeView => ({
  make,
  stock: stock.name,
  sheet: sizeHtml(sheet, unit),
  score: make === 'diagonal' ? measureHtml(formatLength(score, unit)) : null,
  scores: (['width', 'height'] as const).flatMap((along) => {
    const at = scores.filter((line) => line.along === along).map((line) => line.at)
    return at.length === 0
      ? []
      : [{ from: along === 'width' ? ('left' as const) : ('bottom' as const), at: lengthsHtml(at, unit) }]
  }),
  inside: sizeHtml(inside, unit),
})
