import type { Supply, Use } from './problem.ts'

/** From which supply how many sheets are taken. */
export type Taken = readonly number[]

/** The order in which sheets of one shape are taken: offcuts first, then the cheapest. */
const cheapFirst = (supplies: readonly Supply[]): number[] =>
  [...supplies.keys()].sort((a, b) => {
    const [one, other] = [supplies[a], supplies[b]]
    return Number(one?.counted) - Number(other?.counted) || (one?.price ?? 0) - (other?.price ?? 0) || a - b
  })

/** The sheets that a plan takes of each supply; undefined when there are not so many. */
export function takenFor(supplies: readonly Supply[], uses: readonly Use[]): Taken | undefined {
  const taken = supplies.map(() => 0)
  const needed = new Map<number, number>()
  for (const { pattern, times } of uses) needed.set(pattern.shape, (needed.get(pattern.shape) ?? 0) + times)
  for (const i of cheapFirst(supplies)) {
    const { shape, limit } = supplies[i] as Supply
    const need = needed.get(shape) ?? 0
    taken[i] = Math.min(need, limit)
    needed.set(shape, need - (taken[i] ?? 0))
  }
  return [...needed.values()].every((need) => need === 0) ? taken : undefined
}

/** What is left of the supplies after some sheets. */
export function suppliesAfter(supplies: readonly Supply[], uses: readonly Use[]): Supply[] {
  const taken = takenFor(supplies, uses)
  return supplies.map((supply, i) => ({ ...supply, limit: Math.max(0, supply.limit - (taken?.[i] ?? 0)) }))
}

/** What the sheets cost by a price for each supply. */
export const costOf = (taken: Taken, costs: readonly number[]): number =>
  taken.reduce((sum, count, i) => sum + count * (costs[i] ?? 0), 0)
