import { type Grids, gridsOf } from './coarse.ts'
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

/** A shape with its grids. */
export interface Sheet extends Grids {
  readonly shape: Shape
}

export const newTask = (problem: Problem, solver: Solver, work: Work): Task => ({
  problem,
  sheets: problem.shapes.map((shape) => ({ shape, ...gridsOf(shape) })),
  pool: newPool(),
  solver,
  work,
})
