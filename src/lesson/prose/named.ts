import type { Card } from '../../card/card.ts'

/** Something of a card that a step may speak of. */
export interface Named {
  readonly name: string
  readonly kind: 'piece' | 'panel' | 'lettering' | 'envelope'
  readonly card: Card
  /** Name of the piece that it is, or is a part of; the strip of a lettering; missing for the envelope. */
  readonly piece?: string
}

/** Everything of the cards that has a name: pieces, the panels of folded pieces, lettering and the envelope. */
export const namedIn = (cards: readonly Card[]): Named[] => cards.flatMap(namedInCard)

function namedInCard(card: Card): Named[] {
  const { structure, lettering, envelope } = card
  const named = new Map<string, Named>()
  const add = (one: Omit<Named, 'card'>): void => {
    if (!named.has(one.name)) named.set(one.name, { ...one, card })
  }
  for (const { name } of structure.pieces) add({ name, kind: 'piece', piece: name })
  const folded = new Set(structure.pieces.filter(({ kind }) => kind === 'base').map(({ name }) => name))
  for (const { name, piece } of structure.plates) if (folded.has(piece)) add({ name, kind: 'panel', piece })
  for (const { name, on } of lettering) add({ name, kind: 'lettering', piece: on })
  if (envelope) add({ name: 'envelope', kind: 'envelope' })
  return [...named.values()]
}
