import type { Card } from '../../card/card.ts'
import { lengthsOf, type Value } from '../../length/evaluate.ts'
import { ExpressionError } from '../../length/expression.ts'
import type { Length } from '../../length/length.ts'

/** A name of a card that a literal may mean. */
export interface Candidate {
  readonly card: Card
  /** As it is written in braces: with the card's name in front if several cards have it. */
  readonly path: string
  /** What it is of: `backdrop`, `closed`, `leg`. */
  readonly owner: string
  /** What of it: `size`, `border.left`, `scores.1`; empty for a length with a name of its own. */
  readonly part: string
  readonly kind: 'length' | 'size' | 'list'
  readonly lengths: readonly Length[]
}

/** Every name of the cards that is a length, a size or a list of lengths, and not nothing. */
export function candidatesOf(cards: readonly Card[]): Candidate[] {
  const owners = new Map<string, number>()
  for (const card of cards)
    for (const path of card.names.paths()) owners.set(path, (owners.get(path) ?? 0) + 1)
  return cards.flatMap((card) =>
    card.names.paths().flatMap((path) => {
      const value = namedValue(card, path)
      const lengths = value ? lengthsOf(value) : []
      if (!value || lengths.length === 0 || lengths.some((length) => length.lte(0))) return []
      const [owner = '', ...rest] = path.split('.')
      const full = (owners.get(path) ?? 0) > 1 ? `${card.name}.${path}` : path
      const kind = value.kind === 'lengths' ? ('list' as const) : (value.kind as 'length' | 'size')
      const whole: Candidate = { card, path: full, owner, part: rest.join('.'), kind, lengths }
      if (kind !== 'list') return [whole]
      const single = lengths.map((length, i): Candidate => {
        const nth = `.${i + 1}`
        return { ...whole, path: full + nth, part: whole.part + nth, kind: 'length', lengths: [length] }
      })
      return [whole, ...single]
    }),
  )
}

function namedValue(card: Card, path: string): Value | undefined {
  try {
    return card.names.lookup(path.split('.'), { start: 0, end: 0 })
  } catch (error) {
    if (error instanceof ExpressionError) return undefined
    throw error
  }
}
