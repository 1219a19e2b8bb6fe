import type { Card, Envelope } from '../card/card.ts'
import { type Score, scoresOfPiece } from '../card/scores.ts'
import { slantsOfPiece } from '../card/slants.ts'
import type { Piece, Segment } from '../card/structure.ts'
import { formatGrid, formatLength } from '../length/format.ts'
import type { Length, Unit } from '../length/length.ts'
import type { FilledLesson, ProvenCard } from '../lesson/lesson.ts'
import { atMark } from './card-measures.ts'
import { type FindingJson, findingJson } from './finding-json.ts'
import { type LengthJson, lengthJson, type SizeJson, sizeJson } from './length-json.ts'
import { type FitJson, fitJson, type PostJson, postJson } from './mailing-json.ts'

export interface ScoreJson {
  readonly at: LengthJson
  readonly along: 'width' | 'height'
  readonly from: LengthJson
  readonly to: LengthJson
  readonly fold: 'valley' | 'mountain'
  readonly side: 'face' | 'back'
}

export interface PieceJson extends SizeJson {
  readonly name: string
  readonly stock: string
  readonly count: number
  readonly scores: readonly ScoreJson[]
  /** Score lines that are neither upright nor level, by their ends; missing when there are none. */
  readonly slants?: readonly (LineJson & Pick<ScoreJson, 'fold' | 'side'>)[]
  readonly cuts: readonly LineJson[]
}

type LineJson = Readonly<Record<'x1' | 'y1' | 'x2' | 'y2', LengthJson>>

export interface EnvelopeJson {
  readonly make: 'diagonal' | 'side seam'
  readonly stock: string
  readonly sheet: SizeJson
  readonly score: LengthJson
  readonly inside: SizeJson
  /** Where a side seam envelope is scored; a diagonal one has its first score only. */
  readonly scores?: readonly { readonly at: LengthJson; readonly along: 'width' | 'height' }[]
  /** How a diagonal one is scored, from corner to corner of its front. */
  readonly slants?: PieceJson['slants']
  readonly cuts: PieceJson['cuts']
  /** Its panels in the order in which they fold over the front. */
  readonly folding: readonly string[]
}

export interface CardJson {
  readonly name: string
  readonly fold: string
  readonly closed: SizeJson
  /** Missing when the card does not stand. */
  readonly standing?: SizeJson & { readonly depth: LengthJson }
  /** Missing when the card does not fold flat. */
  readonly thickness?: LengthJson
  /** How many creases a hand can bend each on its own: 0 rigid, 1 moves as one. Missing when the card does not fold. */
  readonly freedom?: number
  readonly pieces: readonly PieceJson[]
  readonly lettering: readonly {
    readonly name: string
    readonly on: string
    readonly gap: LengthJson
    readonly marks: readonly LengthJson[]
  }[]
  readonly envelope?: EnvelopeJson
  /** The standard envelopes that take it, the smallest first. Missing, as `post` is, when the card does not fold. */
  readonly fits?: readonly FitJson[]
  readonly post?: readonly PostJson[]
  /** What folding the card found out. */
  readonly findings: readonly FindingJson[]
}

/** What `measure --json` answers. */
export interface MeasuresJson {
  readonly lesson: string
  readonly units: Unit
  readonly grid: string
  readonly cards: readonly CardJson[]
  /** All findings of the lesson, those of its cards too. */
  readonly findings: readonly FindingJson[]
}

/** Every measure of a lesson's cards. */
export const measures = (lesson: FilledLesson): MeasuresJson => ({
  lesson: lesson.frontMatter.title,
  units: lesson.unit,
  grid: formatGrid(lesson.grid),
  cards: lesson.cards.map((card) => cardJson(card, lesson)),
  findings: lesson.findings.map(findingJson),
})

/** Every measure of a card. */
export function cardJson(
  { card, proof }: ProvenCard,
  { unit, grid }: Pick<FilledLesson, 'unit' | 'grid'>,
): CardJson {
  const L = (x: Length) => lengthJson(x, unit)
  const { closed, standing } = proof
  return {
    name: card.name,
    fold: card.fold,
    closed: sizeJson(closed?.size ?? card.closed, unit),
    ...(standing && {
      standing: {
        width: solved(standing.width, grid, unit),
        height: solved(standing.height, grid, unit),
        depth: solved(standing.depth, grid, unit),
      },
    }),
    ...(closed && { thickness: L(closed.thickness), freedom: proof.freedom }),
    pieces: card.structure.pieces.map((piece) => pieceJson(piece, card, L)),
    lettering: card.lettering.map(({ name, on, gap, marks }) => ({
      name,
      on,
      gap: L(gap),
      marks: marks.map(L),
    })),
    ...(card.envelope && { envelope: envelopeJson(card.envelope, L, unit) }),
    ...(closed && {
      fits: card.mailing.fits.map((fit) => fitJson(fit, unit)),
      post: card.mailing.post.map(postJson),
    }),
    findings: proof.findings.map(findingJson),
  }
}

function pieceJson(
  piece: Piece,
  { structure }: Pick<Card, 'structure'>,
  L: (x: Length) => LengthJson,
): PieceJson {
  const score = ({ at, along, from, to, fold, side }: Score): ScoreJson => ({
    at: L(at),
    along,
    from: L(from),
    to: L(to),
    fold,
    side,
  })
  const line = ({ from, to }: Segment): LineJson => ({
    x1: L(from.x),
    y1: L(from.y),
    x2: L(to.x),
    y2: L(to.y),
  })
  const { name, stock, count, size, cuts } = piece
  const slants = slantsOfPiece(structure, name)
  return {
    name,
    stock: stock.name,
    count,
    width: L(size.width),
    height: L(size.height),
    scores: scoresOfPiece(structure, name).map(score),
    ...(slants.length > 0 && {
      slants: slants.map((slant) => ({ ...line(slant), fold: slant.fold, side: slant.side })),
    }),
    cuts: cuts.map(line),
  }
}

function envelopeJson(envelope: Envelope, L: (x: Length) => LengthJson, unit: Unit): EnvelopeJson {
  const { make, stock, sheet, score, inside, scores, structure, folding } = envelope
  const [piece] = structure.pieces.map((one) => pieceJson(one, envelope, L))
  return {
    make,
    stock: stock.name,
    sheet: sizeJson(sheet, unit),
    score: L(score),
    inside: sizeJson(inside, unit),
    ...(scores.length > 0 && { scores: scores.map(({ at, along }) => ({ at: L(at), along })) }),
    ...(piece?.slants && { slants: piece.slants }),
    cuts: piece?.cuts ?? [],
    folding,
  }
}

/** A length that was solved for, in mm: the number to a millionth, the text at the nearest mark of the ruler. */
function solved(millimetres: number, grid: Length, unit: Unit): LengthJson {
  const text = formatLength(atMark(millimetres, grid), unit)
  const digits = (x: number) => Number(x.toFixed(6))
  return { mm: digits(millimetres), in: digits(millimetres / 25.4), text }
}
