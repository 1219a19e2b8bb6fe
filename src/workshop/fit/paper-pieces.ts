import type { Card } from '../../card/card.ts'
import type { Stock } from '../../card/structure.ts'
import type { Size } from '../../length/length.ts'
import type { Wanted } from './cutting/cut-from.ts'

/** A piece of paper that one person needs. */
export interface PaperPiece extends Wanted {
  readonly stock: string
  /** Whether its pattern has a top, or its stock is called patterned. */
  readonly patterned: boolean
}

type Cut = Pick<Card, 'name' | 'structure'> & { readonly envelope?: Card['envelope'] | undefined }

/**
 * What is cut for some cards, the sheets of their envelopes too. Letters are not: they are cut by a die.
 *
 * @param several whether to say which card a piece is of.
 */
export function paperPieces(cards: readonly Cut[], several: boolean): PaperPiece[] {
  return cards.flatMap(({ name: of, structure, envelope }) => {
    const piece = (name: string, size: Size, count: number, stock: Stock): PaperPiece => ({
      name: several ? `${of}.${name}` : name,
      size,
      count,
      stock: stock.name,
      turns: stock.direction !== 'upright',
      patterned: stock.direction === 'upright' || /pattern/i.test(stock.name),
    })
    return [
      ...structure.pieces.map((p) => piece(p.name, p.size, p.count, p.stock)),
      ...(envelope ? [piece('envelope', envelope.sheet, 1, envelope.stock)] : []),
    ]
  })
}
