import { ruleNotation } from '../kit-rule.ts'
import type { KitSupply } from '../kit-supply.ts'
import { likeness, sum } from '../needs.ts'

/**
 * Supplies of several lists as one: what is measured always adds up, what is counted only if it is needed at once.
 *
 * @param adds whether the lists are wanted at the same time.
 */
export function together(lists: readonly (readonly KitSupply[])[], adds: boolean): KitSupply[] {
  const all = new Map<string, KitSupply>()
  for (const supply of lists.flat()) {
    const key = `${likeness(supply.amount)} ${supply.item}`
    const before = all.get(key)
    all.set(key, before ? merged(before, supply, adds) : supply)
  }
  return [...all.values()]
}

function merged(a: KitSupply, b: KitSupply, adds: boolean): KitSupply {
  const same = a.rule && b.rule && ruleNotation(a.rule) === ruleNotation(b.rule)
  const { kind, item } = a
  const amount =
    !adds && a.amount.kind === 'count' && b.amount.kind === 'count'
      ? { ...a.amount, count: Math.max(a.amount.count, b.amount.count) }
      : sum(a.amount, b.amount)
  return { kind, item, amount, ...(same && a.rule && { rule: a.rule }) }
}
