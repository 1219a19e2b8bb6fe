import type { ProvenCard } from './lesson.ts'

/** The stocks that a lesson cuts from, in the order in which its cards first name them. */
export const stocksOf = (cards: readonly ProvenCard[]): string[] => [
  ...new Set(
    cards.flatMap(({ card: { structure, envelope } }) =>
      [...structure.pieces, ...(envelope ? envelope.structure.pieces : [])].map(({ stock }) => stock.name),
    ),
  ),
]
