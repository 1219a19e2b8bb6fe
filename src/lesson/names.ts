import type { Card } from '../card/card.ts'
import { BrokenName } from '../card/scope.ts'
import type { Lookup } from '../length/evaluate.ts'
import { ExpressionError } from '../length/expression.ts'
import { listOf, suggestWord } from '../length/finding.ts'

/**
 * Looks names up in all cards of a lesson. A name that several cards have needs the card's name in front:
 * `box.base.size`.
 *
 * @param complete whether these are all cards: when one of them has mistakes of its own, a name that the others do
 * not have may be one of its, and is not told.
 */
export function namesOf(cards: readonly Card[], complete: boolean): Lookup {
  const owners = new Map<string, Card[]>()
  for (const card of cards)
    for (const path of card.names.paths()) owners.set(path, [...(owners.get(path) ?? []), card])
  return (path, at) => {
    const [first = '', ...rest] = path
    const named = rest.length > 0 ? cards.find((card) => card.name === first) : undefined
    // `box.thickness` is short for `box.card.thickness`.
    for (const short of named ? [rest, ['card', ...rest]] : [])
      if (named?.names.paths().includes(short.join('.'))) return named.names.lookup(short, at)
    const having = owners.get(path.join('.')) ?? []
    if (having.length > 1) throw ambiguous(path, having, at)
    if (having[0]) return having[0].names.lookup(path, at)
    if (!complete) throw new BrokenName(path.join('.'))
    const [only, ...more] = cards
    if (only && more.length === 0) return only.names.lookup(path, at)
    throw unknown(path, named ? pathsIn([named], owners) : pathsIn(cards, owners), at)
  }
}

/** All paths, with the card's name in front where that is needed. */
const pathsIn = (cards: readonly Card[], owners: ReadonlyMap<string, readonly Card[]>): string[] =>
  cards.flatMap((card) =>
    card.names.paths().map((path) => ((owners.get(path) ?? []).length > 1 ? `${card.name}.${path}` : path)),
  )

type Span = Parameters<Lookup>[1]

const ambiguous = (path: readonly string[], cards: readonly Card[], at: Span): ExpressionError => {
  const name = path.join('.')
  return new ExpressionError(
    'ambiguous-name',
    `\`${name}\` is a name of ${cards.length} cards`,
    at,
    `Write ${listOf(
      cards.map((card) => `\`${card.name}.${name}\``),
      'or',
    )}`,
  )
}

function unknown(path: readonly string[], known: readonly string[], at: Span): ExpressionError {
  const name = path.join('.')
  const suggestion = suggestWord(name, known)
  return new ExpressionError(
    'unknown-name',
    `Unexpected name \`${name}\`, expected a piece or a length of a card`,
    at,
    suggestion.startsWith('Write')
      ? suggestion
      : 'Write the name of a piece and a part of it, such as `base.width`',
  )
}
