import type { Amount, FilledLesson, Supply } from '../lesson/lesson.ts'
import { ruleNotation, type SharingRule } from './kit-rule.ts'
import type { Quantity } from './needs.ts'

/** A supply on one of the lists: how much, and the rule it was worked out by if there is one. */
export interface KitSupply {
  readonly kind: 'supply'
  readonly item: string
  readonly amount: Quantity
  readonly rule?: SharingRule
}

/**
 * What lies on one table for the people who make the lesson there; what serves the whole class is not in it.
 *
 * @param largest how many sit at the largest table.
 */
export const tableSupplies = ({ supplies }: FilledLesson, people: number, largest: number): KitSupply[] =>
  supplies.shared
    .filter(({ amount }) => goesByTable(amount, largest))
    .map((supply) => supplyFor(supply, [people], 1))
    .filter(({ amount }) => amount.kind !== 'count' || amount.count > 0)

/** What serves the whole class, whatever table it stands on. */
export const classSupplies = ({ supplies }: FilledLesson, people: number, largest: number): KitSupply[] =>
  supplies.shared
    .filter(({ amount }) => !goesByTable(amount, largest))
    .map((supply) => supplyFor(supply, [people]))

/** What more people share than sit at any table stands between the tables. */
const goesByTable = (amount: Amount, largest: number): boolean =>
  amount.kind === 'per table' || (amount.kind === 'per' && amount.people <= largest)

/**
 * A supply for so many people.
 *
 * @param shares how many of them are served apart from the others, such as those at each table.
 * @param tables how many there are, where that is known.
 */
export function supplyFor({ item, amount }: Supply, shares: readonly number[], tables?: number): KitSupply {
  if (amount.kind === 'per table') {
    if (tables === undefined) return { kind: 'supply', item, amount: onEachTable(amount) }
    return { kind: 'supply', item, amount: { kind: 'count', count: amount.count * tables }, rule: amount }
  }
  if (amount.kind !== 'per') return { kind: 'supply', item, amount }
  const groups = goesByTable(amount, Math.max(...shares)) ? shares : [shares.reduce((a, b) => a + b, 0)]
  const count = groups.reduce((sum, people) => sum + perGroup(amount, people), 0)
  return { kind: 'supply', item, amount: { kind: 'count', count }, rule: amount }
}

/** Where nobody knows how many tables there are. */
export const onEachTable = (amount: SharingRule & { kind: 'per table' }): Quantity => ({
  kind: 'text',
  text: ruleNotation(amount),
  perTable: amount.count,
})

/** A group that is not full still gets all of it: 1 per 3 is 5 for 14 people, 2 per 3 is 10. */
export const perGroup = ({ count, people: size }: Amount & { kind: 'per' }, people: number): number =>
  count * Math.ceil(people / size)
