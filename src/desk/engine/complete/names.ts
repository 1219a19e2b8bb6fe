import type { Card } from '../../../card/card.ts'
import { ExpressionError } from '../../../length/expression.ts'
import type { Unit } from '../../../length/length.ts'
import type { FilledLesson } from '../../../lesson/lesson.ts'
import { formatValue } from '../../../lesson/measure.ts'

/** A name that can be asked for, and what it comes to. */
export interface NamedValue {
  readonly path: string
  readonly value?: string
}

/** What a person is most often after comes first. */
const order = ['size', 'width', 'height', 'scores', 'valleys', 'mountains', 'count', 'gap', 'marks']

/** Every name of a lesson's cards with its value in the unit of the print. One that several cards have has its card's name in front. */
export function namedValues({ cards, unit }: Pick<FilledLesson, 'cards' | 'unit'>): NamedValue[] {
  const owners = new Map<string, number>()
  for (const { card } of cards)
    for (const path of card.names.paths()) owners.set(path, (owners.get(path) ?? 0) + 1)
  return cards.flatMap(({ card }) =>
    namesOfCard(card, unit).map((one) =>
      (owners.get(one.path) ?? 0) > 1 ? { ...one, path: `${card.name}.${one.path}` } : one,
    ),
  )
}

/** The names of one card, as they are written in its own block. */
export const namesOfCard = (card: Card, unit: Unit): NamedValue[] =>
  card.names
    .paths()
    .toSorted((a, b) => rank(a) - rank(b))
    .map((path) => ({ path, ...valueIn(card, path, unit) }))

function rank(path: string): number {
  const found = order.indexOf(path.slice(path.lastIndexOf('.') + 1))
  return (found < 0 ? order.length : found) + path.split('.').length * 2
}

function valueIn(card: Card, path: string, unit: Unit): { value: string } | object {
  try {
    return { value: formatValue(card.names.lookup(path.split('.'), { start: 0, end: 0 }), unit) }
  } catch (error) {
    if (error instanceof ExpressionError) return {}
    throw error
  }
}
