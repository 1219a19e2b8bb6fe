import type { Card } from '../card/card.ts'
import type { Size } from '../length/length.ts'
import type { FilledLesson } from '../lesson/lesson.ts'

/** A piece of paper that goes into every kit. */
export interface KitPiece {
  readonly kind: 'piece'
  readonly item: string
  /** Name of its card, where a lesson has several. */
  readonly card?: string
  /** How many of it one kit holds. */
  readonly count: number
  readonly size: Size
  readonly stock: string
}

/** The letters that go on one piece of every kit. */
export interface KitLetters {
  readonly kind: 'letters'
  readonly item: string
  readonly card?: string
  readonly count: number
  /** The letters in their order, such as `HARBOUR`. */
  readonly letters: string
}

/** All pieces of one stock that a class needs. */
export interface StockTotal {
  readonly stock: string
  /** The pieces with how many of each the whole class needs, spare kits too. */
  readonly pieces: readonly Omit<KitPiece, 'kind'>[]
}

/** What one kit holds of every card of the lesson: its pieces, the sheet for its envelope, its letters. */
export function kitPieces(lesson: FilledLesson): (KitPiece | KitLetters)[] {
  const several = lesson.cards.length > 1
  return lesson.cards.flatMap(({ card }) => piecesOf(card, several ? { card: card.name } : {}))
}

function piecesOf(card: Card, of: { card?: string }): (KitPiece | KitLetters)[] {
  const piece = (item: string, count: number, size: Size, stock: string): KitPiece => ({
    kind: 'piece',
    item,
    ...of,
    count,
    size,
    stock,
  })
  return [
    ...card.structure.pieces.map((p) => piece(p.name, p.count, p.size, p.stock.name)),
    ...(card.envelope ? [piece('envelope', 1, card.envelope.sheet, card.envelope.stock.name)] : []),
    ...card.lettering.map(({ name, letters }) => ({
      kind: 'letters' as const,
      item: name,
      ...of,
      count: letters.length,
      letters: letters.join(''),
    })),
  ]
}

/** The pieces of `kits` kits, gathered by stock, in the order in which the lesson first uses each stock. */
export function totalsByStock(pieces: readonly (KitPiece | KitLetters)[], kits: number): StockTotal[] {
  const byStock = new Map<string, Omit<KitPiece, 'kind'>[]>()
  for (const piece of pieces) {
    if (piece.kind !== 'piece') continue
    const { kind: _, ...rest } = piece
    const list = byStock.get(piece.stock) ?? []
    byStock.set(piece.stock, [...list, { ...rest, count: piece.count * kits }])
  }
  return [...byStock].map(([stock, list]) => ({ stock, pieces: list }))
}
