import { type Length, plus } from '../length/length.ts'

/** How much of a supply is needed in all. */
export type Quantity =
  | { readonly kind: 'count'; readonly count: number }
  | { readonly kind: 'length'; readonly length: Length }
  /** As the teacher put it, such as `a little`: nothing to add up. */
  | { readonly kind: 'text'; readonly text: string }

/** What a class uses up of one supply. */
export interface Need {
  readonly item: string
  readonly need: Quantity
}

/**
 * Adds up what is needed of each item, counts to counts and lengths to lengths. An item that is counted in one
 * place and measured in another stays two needs, and so do two different wordings.
 */
export function addUp(needs: readonly Need[]): Need[] {
  const sums = new Map<string, Need>()
  for (const { item, need } of needs) {
    const key = JSON.stringify([item, need.kind, need.kind === 'text' && need.text])
    const before = sums.get(key)
    sums.set(key, { item, need: before ? sum(before.need, need) : need })
  }
  return [...sums.values()]
}

function sum(a: Quantity, b: Quantity): Quantity {
  if (a.kind === 'count' && b.kind === 'count') return { kind: 'count', count: a.count + b.count }
  if (a.kind === 'length' && b.kind === 'length') return { kind: 'length', length: plus(a.length, b.length) }
  return a
}
