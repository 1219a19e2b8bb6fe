import type { Card } from '../../card/card.ts'
import { coveringsOf } from '../../lesson/actions/coverings.ts'
import { type Part, supportsFrom } from './parts.ts'
import type { Scene } from './scene.ts'

/**
 * The pieces in the order in which they are put together: the ground first, nothing before what it lies over or is stuck
 * on, else as the card block says, with spans last.
 */
export function assemblyOrder(
  card: Card,
  { parts: { all, holds }, still: [ground], supports, lifts }: Scene,
): string[] {
  if (!ground) return []
  const kinds = new Map(card.structure.pieces.map(({ name, kind }) => [name, kind]))
  const names = card.structure.pieces
    .map(({ name }) => name)
    .filter((name) => all.some((part) => part.piece === name))
  // A lid, which nothing holds to the rest, comes last, with what is stuck on it.
  const own = new Set([ground, ...supportsFrom([ground], holds).keys()].map(({ piece }) => piece))
  const rank = (name: string): number =>
    name === ground.piece ? 0 : own.has(name) ? (kinds.get(name) === 'span' ? 2 : 1) : 3
  const wished = [0, 1, 2, 3].flatMap((n) => names.filter((name) => rank(name) === n))
  // What is on the underside of a sheet lies under it, and yet is stuck to it.
  const hangsOn = (part: Part, other: Part): boolean => {
    const on = supports.get(part)?.on
    return on !== undefined && (on === other || hangsOn(on, other))
  }
  const pairs = [
    ...[...supports].map(([part, { on }]) => [on.piece, part.piece] as const),
    ...[...lifts].flatMap(([part, { over }]) =>
      over.filter((other) => !hangsOn(other, part)).map((other) => [other.piece, part.piece] as const),
    ),
    ...coveringsOf(card).map(({ under, over }) => [under, over] as const),
  ].filter(([under, over]) => under !== over)
  const order: string[] = []
  for (let left = wished; left.length > 0; ) {
    // Pieces cut alike may lie under and over one another: then the block decides.
    const free = left.find((name) => !pairs.some(([under, over]) => over === name && left.includes(under)))
    const next = free ?? left[0] ?? ''
    order.push(next)
    left = left.filter((name) => name !== next)
  }
  return order
}
