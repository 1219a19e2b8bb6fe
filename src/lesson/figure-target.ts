import type { Card } from '../card/card.ts'
import type { ProvenCard } from './lesson.ts'

/** What a figure shows: a card, or one thing of it. */
export interface FigureTarget {
  readonly card: ProvenCard
  readonly of?: string
}

/** The card that a lesson is about: the one named `card`, or else the first. Another closed size is wished of it. */
export const mainCard = <C extends { readonly name: string }>(cards: readonly C[]): C | undefined =>
  cards.find(({ name }) => name === 'card') ?? cards[0]

/** What `of` can name in a card: its pieces and layers, what letters are on, its lettering, and the envelope. */
export const figureNames = ({ structure, layers, lettering, envelope }: Card): string[] => [
  ...new Set([
    ...structure.pieces.map(({ name }) => name),
    ...layers.map(({ name }) => name),
    ...lettering.flatMap(({ name, on }) => [name, on]),
    ...(envelope ? ['envelope'] : []),
  ]),
]

/**
 * Everything the `of` of a figure may mean. There is one answer when it is right: none, and it names nothing; several,
 * and it needs the card's name in front, as in `box.base`.
 *
 * @param written absent for the whole of the main card.
 */
export function figureTargets(written: string | undefined, cards: readonly ProvenCard[]): FigureTarget[] {
  const of = written?.normalize('NFC')
  if (of === undefined) {
    const main = mainCard(cards.map(({ card }) => card))
    return cards.filter(({ card }) => card === main).map((card) => ({ card }))
  }
  const whole = cards.filter(({ card }) => card.name === of)
  if (whole.length > 0) return whole.map((card) => ({ card }))
  return cards.flatMap((card) => {
    const { name } = card.card
    const own = figureNames(card.card)
    if (own.includes(of)) return [{ card, of }]
    const rest = of.startsWith(`${name}.`) ? of.slice(name.length + 1) : undefined
    return rest !== undefined && own.includes(rest) ? [{ card, of: rest }] : []
  })
}
