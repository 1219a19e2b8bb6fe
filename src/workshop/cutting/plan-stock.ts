import { generateColumns } from './columns.ts'
import { type Batch, exactly } from './exact-uses.ts'
import { fewestLayouts, useful } from './few-layouts.ts'
import type { Goal } from './master.ts'
import { addNearPatterns } from './near-patterns.ts'
import { withCharge } from './one-charge.ts'
import { leftAfter, type Pattern, type Problem, type Use } from './problem.ts'
import { type Found, leastCost } from './search.ts'
import type { Solver } from './solver.ts'
import { takenFor } from './supplies.ts'
import { newTask, type Task } from './task.ts'
import { wholePlan } from './whole-plan.ts'
import type { Work } from './work.ts'

/** The plan of one stock in marks. */
export interface StockPlan {
  readonly batches: readonly Batch[]
  /** Patterns that hold the pieces of each batch. */
  readonly patterns: readonly Pattern[]
  /** Sheets that count, and fewer than which would not do. */
  readonly used: number
  readonly bound: number
  /** Whether it is proven that no plan takes fewer sheets, nor costs less with as many. */
  readonly proven: boolean
  /** How many of each kind there is no paper for. */
  readonly short: readonly number[]
}

/**
 * Fewest sheets first, offcuts not counted; with as many sheets, least cost; then fewest layouts. Each is settled before
 * the next is looked at, so no price is worth a sheet.
 */
export async function planStock(asked: Problem, solver: Solver, work: Work): Promise<StockPlan> {
  const sheets: Goal = { costs: asked.supplies.map(({ counted }) => Number(counted)) }
  let task = newTask(asked, solver, work)
  let found = await leastCost(task, sheets)
  let short = asked.counts.map(() => 0)
  if (!Number.isFinite(found.cost)) {
    short = leftAfter(asked.counts, mostPieces(task, sheets))
    task = {
      ...task,
      problem: { ...asked, counts: asked.counts.map((count, kind) => count - (short[kind] ?? 0)) },
    }
    found = await leastCost(task, sheets)
  }
  const cheapest = await leastMoney(task, found)
  const batches = alike(task, exactly(cheapest.uses, task.problem.counts))
  return {
    batches,
    patterns: task.pool.patterns,
    used: found.cost,
    bound: found.bound,
    proven: found.cost === found.bound && cheapest.cost === cheapest.bound,
    short,
  }
}

/** The same sheets with fewer layouts, so that a stack can be cut together. */
function alike({ problem, pool, solver, work }: Task, batches: readonly Batch[]): Batch[] {
  // Where each piece is wanted once, no two sheets are alike.
  if (problem.counts.every((count) => count < 2)) return [...batches]
  const sheets: number[] = []
  for (const { shape, times } of batches) sheets[shape] = (sheets[shape] ?? 0) + times
  const patterns = useful(pool.patterns, sheets, batches)
  const searched = fewestLayouts(batches, sheets, patterns, work.share(0.02))
  if (searched.length <= 3) return searched
  const charged = withCharge(problem, sheets, patterns, solver, work)
  return charged && charged.length < searched.length ? charged : searched
}

/** As much as there is paper for: pieces are left out by the paper they take. */
function mostPieces(task: Task, goal: Goal): readonly Use[] {
  const { dear } = generateColumns(task, task.problem, goal, task.work.share(0.3))
  if (dear) addNearPatterns(task, goal, Number.POSITIVE_INFINITY, dear)
  return wholePlan(task, task.problem, task.pool.patterns, goal, 300)?.uses ?? []
}

/** With as many sheets at most, the plan that costs least. */
async function leastMoney(task: Task, found: Found): Promise<Found> {
  const { supplies } = task.problem
  const prices = new Set(supplies.map(({ price }) => price))
  // With one price, or nothing to choose from, fewest sheets is also least money.
  const goal: Goal = { costs: supplies.map(({ price }) => price), most: found.cost }
  const cost =
    takenFor(supplies, found.uses)?.reduce((sum, count, i) => sum + count * (goal.costs[i] ?? 0), 0) ?? 0
  if (cost === 0 || (prices.size === 1 && supplies.every(({ counted }) => counted)))
    return { uses: found.uses, cost, bound: cost }
  return leastCost(task, goal, found.uses)
}
