import type { Origin } from '../../card/origins.ts'
import { isOnGrid, type Rounding } from '../../length/grid.ts'
import type { Length } from '../../length/length.ts'
import type { Printed } from './exactly.ts'
import type { Follow } from './follows.ts'
import type { CardNumber, Values } from './numbers.ts'

/** Where a number comes from. */
export type Source =
  | ({ readonly kind: 'parameter' } & Pick<Origin, 'from' | 'text' | 'place'>)
  /** Worked out by a formula that comes to exactly it. */
  | { readonly kind: 'formula'; readonly text: string }
  /** Worked out from these, in a way that is no plain sum. */
  | { readonly kind: 'lengths'; readonly names: readonly string[] }
  /** Found by folding the card, and by standing it up. */
  | { readonly kind: 'folding' | 'standing' }

/** A number of a card, with all that there is to know of it. */
export interface Explained {
  readonly name: string
  readonly owner: string
  /** As it is printed. */
  readonly value: Length
  /** With nothing of the card rounded; missing where that is no card. */
  readonly exact?: Length
  readonly source: Source
  /**
   * How it came on the ruler from lengths that are on it: as it was, to a mark in some direction, or with what the ruler
   * leaves over of others.
   */
  readonly rounding: 'none' | Rounding | 'rest'
  /** What it changes with; empty when it is fixed, missing when that is not known. */
  readonly follows?: readonly Follow[]
}

/** A number as far as the printed card tells. */
export function plainly({ card }: Printed, { name, owner, keys }: CardNumber, now: Values): Explained[] {
  const value = now.get(keys[0] ?? '')
  if (!value) return []
  const origin = card.origins.get(name)
  if (origin) {
    const { from, text, place, exact, round } = origin
    const rounding = round === 'exact' || isOnGrid(exact, card.grid) ? 'none' : round
    return [
      { name, owner, value, source: { kind: 'parameter', from, text, ...(place && { place }) }, rounding },
    ]
  }
  if (name === 'card.thickness') return [{ name, owner, value, source: { kind: 'folding' }, rounding: 'up' }]
  return [{ name, owner, value, source: { kind: 'lengths', names: [] }, rounding: 'none' }]
}
