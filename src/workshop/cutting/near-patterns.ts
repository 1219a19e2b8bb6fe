import { type Prices, parts } from './bound.ts'
import { growBoxes, type Part } from './grow-boxes.ts'
import type { Goal } from './master.ts'
import { mostValue } from './most-value.ts'
import { pairSteps } from './pricing.ts'
import type { Problem } from './problem.ts'
import type { Task } from './task.ts'

/** Prices, and what no pattern of each shape is worth more than at them. */
export interface Dear {
  readonly prices: Prices
  readonly ceilings: readonly number[]
}

/** Patterns and pairs of boxes that are looked at, at most, for each shape. */
const mostPatterns = 3000
const mostPairs = 1_000_000

/**
 * Puts every pattern into the pool that a plan of a cost could use: one that is worth too little would leave more to the
 * other sheets than they are worth at the most (R. Baldacci, N. Christofides and A. Mingozzi, An exact algorithm for the
 * vehicle routing problem, Math. Program. 115 (2008) 351–385, who leave out routes in the same way).
 *
 * @returns false when there are too many of them.
 */
export function addNearPatterns(
  { problem, sheets, pool, work }: Task,
  goal: Goal,
  cost: number,
  { prices, ceilings }: Dear,
): boolean {
  const lost = spareValue(problem, goal, cost, { prices, ceilings })
  for (const [shape, { bounding: grid, shape: sheet }] of sheets.entries()) {
    const cheapest = Math.min(
      ...problem.supplies.flatMap((supply, i) =>
        supply.shape === shape ? [dear(problem, goal, prices, i)] : [],
      ),
    )
    const kept: Part[] = []
    const least = Math.max(-1, cheapest - lost - 1)
    const table = mostValue(grid, prices.values)
    const { ceiling, pairs } = growBoxes({ shape: sheet, grid, values: prices.values, table }, problem, {
      above: () => least,
      visit: (part) => {
        if (part.value > least) kept.push(part)
        return kept.length > mostPatterns
      },
      pairs: mostPairs,
    })
    work.spend(pairs * pairSteps + grid.work * 2)
    if (kept.length > mostPatterns || ceiling > least) return false
    for (const part of kept) pool.add(shape, part, problem.counts)
  }
  return true
}

/** What a sheet of a supply costs in parts, with the price of using one more. */
const dear = ({ supplies }: Problem, { costs, most }: Goal, { sheet }: Prices, i: number): number =>
  (costs[i] ?? 0) * parts + (supplies[i]?.counted && most !== undefined ? sheet : 0)

/** By how much in all the sheets of a plan of this cost may be worth less than they cost. */
function spareValue(problem: Problem, goal: Goal, cost: number, { prices, ceilings }: Dear): number {
  const { counts, supplies } = problem
  const asked = counts.reduce((sum, count, kind) => sum + count * (prices.values[kind] ?? 0), 0)
  const paid = cost * parts + (goal.most ?? 0) * (goal.most === undefined ? 0 : prices.sheet)
  const gained = supplies.reduce((sum, { shape, limit }, i) => {
    const over = Math.max(0, (ceilings[shape] ?? 0) - dear(problem, goal, prices, i))
    const each = goal.costs[i] ?? 0
    const sheets = each > 0 ? Math.min(limit, Math.floor(cost / each)) : limit
    return over > 0 ? sum + over * sheets : sum
  }, 0)
  return paid + gained - asked
}
