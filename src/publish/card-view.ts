import type { Card, Envelope, Lettering } from '../card/card.ts'
import type { Proof } from '../fold/pose.ts'
import { formatSize } from '../length/format.ts'
import { nearest } from '../length/grid.ts'
import { type Length, mm, type Size, type Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'
import type { Html } from './html-text.ts'
import { measureHtml, measureWithin, sizeHtml } from './measure-html.ts'
import { type PieceView, piecesView } from './pieces.ts'

/** Where the letters of a word go on their strip. */
export interface LetteringView {
  readonly on: string
  readonly gap: Html
  /** The left edge of each letter, from the left end of the strip; the unit stands in `unit`. */
  readonly letters: readonly { readonly letter: string; readonly at: Html }[]
  readonly unit: Unit
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
  /** How it is cut and folded, unless the lesson shows that itself. */
  readonly figure: Html | null
}

/** One card of the lesson: what it comes to, and what it is cut from. */
export interface CardView {
  readonly name: string
  /** Width × height, and for a box how deep it is. */
  readonly shut: Html
  /** Width × height × depth, to the nearest mark of the ruler. */
  readonly standing: Html | null
  readonly pieces: readonly PieceView[]
  readonly lettering: readonly LetteringView[]
  readonly envelope: EnvelopeView | null
}

/** @param figure how its envelope is made. */
export function cardView(
  proven: ProvenCard,
  wording: Wording,
  grid: Length,
  figure: Html | null = null,
): CardView {
  const { card, proof } = proven
  return {
    name: wording.name(card.name),
    shut: measureHtml(shutWords(proven, wording, grid)),
    standing: standingHtml(proof, wording, grid),
    pieces: piecesView(card, wording),
    lettering: card.lettering.map((lettering) => letteringView(lettering, wording)),
    envelope: card.envelope ? { ...envelopeView(card.envelope, wording), figure } : null,
  }
}

/** The size of the shut card as plain text, for the desk. */
export const shutText = ({ closed }: Card, unit: Unit): string => formatSize(closed, unit)

/** The size of the shut card. A box is as deep as it is, however flat its sheets are. */
export function shutWords({ card, proof: { closed } }: ProvenCard, wording: Wording, grid: Length): string {
  const size = wording.size(card.closed)
  if (closed?.isFlat !== false) return size
  return wording.say('handout.shut-deep', { size, depth: wording.length(nearest(closed.thickness, grid)) })
}

/** How large a card stands, on marks of the ruler. */
export function standingOf(
  { standing }: Proof,
  grid: Length,
): (Size & { readonly depth: Length }) | undefined {
  if (!standing) return undefined
  const [width, height, depth] = [standing.width, standing.height, standing.depth].map((x) =>
    nearest(mm(Math.round(x * 1000) / 1000), grid),
  ) as [Length, Length, Length]
  return { width, height, depth }
}

function standingHtml(proof: Proof, wording: Wording, grid: Length): Html | null {
  const stands = standingOf(proof, grid)
  if (!stands) return null
  const { width, height, depth } = stands
  return measureHtml(`${wording.bare(width)} × ${wording.size({ width: height, height: depth })}`)
}

const letteringView = ({ on, gap, letters, marks }: Lettering, wording: Wording): LetteringView => ({
  on: wording.name(on),
  gap: measureWithin(wording.length(gap)),
  letters: marks.map((mark, i) => ({ letter: letters[i] ?? '', at: measureHtml(wording.bare(mark)) })),
  unit: wording.unit,
})

const envelopeView = (
  { make, stock, sheet, score, scores, inside }: Envelope,
  wording: Wording,
): Omit<EnvelopeView, 'figure'> => ({
  make,
  stock: wording.name(stock.name),
  sheet: sizeHtml(sheet, wording),
  score: make === 'diagonal' ? measureWithin(wording.length(score)) : null,
  scores: (['width', 'height'] as const).flatMap((along) => {
    const at = scores.filter((line) => line.along === along).map((line) => line.at)
    return at.length === 0
      ? []
      : [
          {
            from: along === 'width' ? ('left' as const) : ('bottom' as const),
            at: measureWithin(wording.lengths(at)),
          },
        ]
  }),
  inside: sizeHtml(inside, wording),
})
