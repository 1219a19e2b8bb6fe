import type { Card } from '../card/card.ts'
import { BrokenName } from '../card/scope.ts'
import type { Lookup, Value } from '../length/evaluate.ts'
import { ExpressionError } from '../length/expression.ts'
import { listOf, nearestWord } from '../length/finding.ts'

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
      if (named && owners.get(short.join('.'))?.includes(named)) return named.names.lookup(short, at)
    const having = owners.get(path.join('.')) ?? []
    if (having.length > 1) throw ambiguous(path, having, at)
    if (having[0]) return having[0].names.lookup(path, at)
    if (!complete) throw new BrokenName(path.join('.'))
    if (named) return inCard(named, rest, at)
    const [only, ...more] = cards
    if (only && more.length === 0) return only.names.lookup(path, at)
    throw unknown(path, cards, owners, at)
  }
}

/** Looks a name up that its card does not have: the card's own advice, with its name in front. */
function inCard(card: Card, path: readonly string[], at: Span): Value {
  try {
    return card.names.lookup(path, at)
  } catch (error) {
    if (!(error instanceof ExpressionError)) throw error
    const advice = error.suggestion?.replace(/`([^`]+)`/g, `\`${card.name}.$1\``)
    throw new ExpressionError(error.rule, error.message, at, advice)
  }
}

type Span = Parameters<Lookup>[1]

const ambiguous = (path: readonly string[], cards: readonly Card[], at: Span): ExpressionError => {
  const name = path.join('.')
  return new ExpressionError(
    'ambiguous-name',
    `\`${name}\` is a name of ${cards.length} cards`,
    at,
    `Write ${quoted(cards.map((card) => `${card.name}.${name}`))}`,
  )
}

function unknown(
  path: readonly string[],
  cards: readonly Card[],
  owners: ReadonlyMap<string, readonly Card[]>,
  at: Span,
): ExpressionError {
  const [first = '', ...rest] = path
  // A piece whose name is near, or else a part of that very piece whose name is near.
  const pieces = [...new Set([...owners.keys()].map((known) => known.split('.')[0] ?? ''))]
  const piece = pieces.includes(first) ? first : nearestWord(first, pieces)
  const parts = [...owners.keys()].filter((known) => known.startsWith(`${piece}.`))
  const wanted = [piece, ...rest].join('.')
  const near = parts.includes(wanted) ? wanted : nearestWord(wanted, parts)
  const having = near === undefined ? [] : (owners.get(near) ?? [])
  const fixed = having.length > 1 ? having.map((card) => `${card.name}.${near}`) : having.map(() => `${near}`)
  return new ExpressionError(
    'unknown-name',
    `Unexpected name \`${path.join('.')}\`, expected a piece or a length of ${cards.length} cards`,
    at,
    fixed.length > 0
      ? `Write ${quoted(fixed)}`
      : `Write the name of a piece and a part of it; the pieces are ${quoted(pieces, 'and')}`,
  )
}

const quoted = (words: readonly string[], last = 'or'): string =>
  listOf(
    words.map((word) => `\`${word}\``),
    last,
  )
