import { generateColumns, type Relaxed } from './columns.ts'
import { dive } from './dive.ts'
import { fillSheets, firstValues } from './greedy.ts'
import type { Goal } from './master.ts'
import { addNearPatterns } from './near-patterns.ts'
import { leftAfter, type Problem, type Use } from './problem.ts'
import { quickBound } from './quick-bound.ts'
import { costOf, takenFor } from './supplies.ts'
import type { Task } from './task.ts'
import { wholePlan } from './whole-plan.ts'

/** The best plan found for a goal. */
export interface Found {
  readonly uses: readonly Use[]
  readonly cost: number
  /** No plan costs less: a whole number, because costs are. */
  readonly bound: number
}

/** Rounds of filling sheets before anything else, and branches looked at for each plan in whole numbers. */
const rounds = 6
const nodes = 300

/**
 * The plan that costs least, as far as it is found with the work there is. Filling sheets gives a first plan, column
 * generation the patterns and a bound, branch and bound a plan of these patterns. When its cost is above the bound, a
 * dive looks for more patterns; when few could be part of a better plan, all are taken, and the plan is proven.
 *
 * @param known a plan that is known already.
 */
export async function leastCost(task: Task, goal: Goal, known?: readonly Use[]): Promise<Found> {
  const { problem, pool, work } = task
  let best: { uses: readonly Use[]; cost: number } = { uses: [], cost: Number.POSITIVE_INFINITY }
  let bound = goal.costs.every((cost) => cost === 1) ? quickBound(problem) : 0
  const offer = (uses: readonly Use[] | undefined): void => {
    const cost = uses ? costBy(problem, goal, uses) : undefined
    if (uses && cost !== undefined && cost < best.cost) best = { uses, cost }
  }
  const done = (): boolean => best.cost <= bound
  const tell = (): Promise<void> => work.tell(best.cost, bound)
  offer(known)
  const values = firstValues(problem)
  const filling = work.share(0.15)
  if (!known)
    for (let round = 0; round < rounds && !done() && !(filling.over && round > 0); round++)
      offer(fillSheets({ ...task, work: filling }, values))
  await tell()
  if (done() || work.over) return { ...best, bound }
  const relaxed = generateColumns(
    task,
    problem,
    goal,
    work.share(0.5),
    (proven) => Number(proven.ceil()) >= best.cost,
  )
  bound = Math.max(bound, Number(relaxed.bound.ceil()))
  await tell()
  if (done() || (relaxed.ended && leavesOut(problem, relaxed))) return { ...best, bound }
  offer(wholePlan(task, problem, pool.patterns, goal, nodes, bound)?.uses)
  await tell()
  if (done() || work.over) return { ...best, bound }
  if (relaxed.dear && addNearPatterns(task, goal, best.cost - 1, relaxed.dear)) {
    const all = wholePlan(task, problem, pool.patterns, goal, nodes * 30, bound)
    offer(all?.uses)
    if (all?.best) bound = Math.max(bound, best.cost)
  }
  if (done()) return { ...best, bound }
  await tell()
  offer(dive(task, goal, work.share(0.5)))
  for (let round = 0; round < 4 * rounds && !done() && !work.over; round++) offer(fillSheets(task, values))
  await tell()
  if (!done()) offer(wholePlan(task, problem, pool.patterns, goal, nodes, bound)?.uses)
  return { ...best, bound }
}

/** Whether even in fractions there are too few sheets for all pieces. */
const leavesOut = ({ counts }: Problem, { values }: Relaxed): boolean =>
  values.slice(-counts.length).some((count) => count > 1e-6)

/** What a plan costs; undefined when it leaves pieces out or there are too few sheets for it. */
export function costBy(
  { counts, supplies }: Problem,
  { costs, most }: Goal,
  uses: readonly Use[],
): number | undefined {
  const taken = takenFor(supplies, uses)
  if (!taken || leftAfter(counts, uses).some((count) => count > 0)) return undefined
  const counted = supplies.reduce((sum, supply, i) => sum + (supply.counted ? (taken[i] ?? 0) : 0), 0)
  return most !== undefined && counted > most ? undefined : costOf(taken, costs)
}
