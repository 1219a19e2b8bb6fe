import { type Goal, masterProgram, usesOf } from './master.ts'
import type { Pattern, Problem, Use } from './problem.ts'
import type { Task } from './task.ts'

/** Sheets in whole numbers. */
export interface WholePlan {
  readonly uses: readonly Use[]
  /** Whether no other plan of these patterns costs less. */
  readonly best: boolean
}

/**
 * The plan of these patterns that costs least, by branch and bound.
 *
 * @param nodes that are looked at, at most.
 * @param enough a cost at which no better plan is looked for.
 */
export function wholePlan(
  { solver, work }: Pick<Task, 'solver' | 'work'>,
  problem: Problem,
  patterns: readonly Pattern[],
  goal: Goal,
  nodes: number,
  enough?: number,
): WholePlan | undefined {
  const program = masterProgram(problem, patterns, goal, true)
  // A branch costs about as much as solving the program once.
  work.spend(program.columns.length * program.rows.length * 100 * Math.min(nodes, 50))
  const solved = solver(program, { nodes, ...(enough !== undefined && { enough }) })
  return solved && { uses: usesOf(problem, patterns, solved.values), best: solved.best }
}
