import { type Area, areaPlus } from '../length/area.ts'
import { type Length, plus } from '../length/length.ts'
import type { Dose } from '../lesson/dose.ts'

/** How much of a supply is needed in all. */
export type Quantity =
  /** `of`: what is counted, where it is no thing of its own, such as `drops`. */
  | { readonly kind: 'count'; readonly count: number; readonly of?: string }
  | { readonly kind: 'length'; readonly length: Length }
  | { readonly kind: 'area'; readonly area: Area }
  | { readonly kind: 'dose'; readonly dose: Dose }
  /** As the teacher put it, such as `a little`: nothing to add up. `perTable`: so many on each, however many there are. */
  | { readonly kind: 'text'; readonly text: string; readonly perTable?: number }

/** What a class uses up of one supply. */
export interface Need {
  readonly item: string
  readonly need: Quantity
}

/**
 * Adds up what is needed of each item, like to like. An item that is counted in one place and measured in another stays
 * two needs, and so do two different wordings.
 */
export function addUp(needs: readonly Need[]): Need[] {
  const sums = new Map<string, Need>()
  for (const { item, need } of needs) {
    const key = JSON.stringify([item, likeness(need), need.kind === 'text' && need.text])
    const before = sums.get(key)
    sums.set(key, { item, need: before ? sum(before.need, need) : need })
  }
  return [...sums.values()]
}

/** What two quantities must have in common to be added or compared: grams go with grams, drops with drops. */
export function likeness(quantity: Quantity): string {
  if (quantity.kind === 'dose') return `dose in ${quantity.dose.unit}`
  return quantity.kind === 'count' ? `count of ${quantity.of ?? 'things'}` : quantity.kind
}

/** The sum of two like quantities; of two wordings the first. */
export function sum(a: Quantity, b: Quantity): Quantity {
  if (a.kind === 'count' && b.kind === 'count') return { ...a, count: a.count + b.count }
  if (a.kind === 'length' && b.kind === 'length') return { kind: 'length', length: plus(a.length, b.length) }
  if (a.kind === 'area' && b.kind === 'area') return { kind: 'area', area: areaPlus(a.area, b.area) }
  if (a.kind === 'dose' && b.kind === 'dose')
    return { kind: 'dose', dose: { ...a.dose, amount: a.dose.amount.add(b.dose.amount) } }
  return a
}
