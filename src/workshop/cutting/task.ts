import { type Grid, gridOf } from './grid.ts'
import { newPool, type Pool } from './pool.ts'
import type { Problem, Shape } from './problem.ts'
import type { Solver } from './solver.ts'
import type { Work } from './work.ts'

/** One stock to plan: what is asked, and what to look with. */
export interface Task {
  readonly problem: Problem
  readonly sheets: readonly Sheet[]
  readonly pool: Pool
  readonly solver: Solver
  readonly work: Work
}

/** A shape with its grid. */
export interface Sheet {
  readonly shape: Shape
  readonly grid: Grid
}

export const newTask = (problem: Problem, solver: Solver, work: Work): Task => ({
  problem,
  sheets: problem.shapes.map((shape) => ({ shape, grid: gridOf(shape) })),
  pool: newPool(),
  solver,
  work,
})
