import Fraction from 'fraction.js'
import { lowerBound, parts, pricesOf } from './bound.ts'
import { type Goal, masterProgram } from './master.ts'
import type { Dear } from './near-patterns.ts'
import { price } from './pricing.ts'
import type { Problem } from './problem.ts'
import type { Task } from './task.ts'
import type { Work } from './work.ts'

export interface Relaxed {
  /** No plan that cuts all pieces costs less. */
  readonly bound: Fraction
  /** How often each supply and each pattern of the pool is used, in fractions. */
  readonly values: readonly number[]
  /** Whether it is certain that no other pattern would help. */
  readonly ended: boolean
  /** The prices that the bound is from; undefined when the program has no answer. */
  readonly dear?: Dear
}

/** What is less than this part of a sheet better is not worth a pattern of its own. */
const little = parts / 2 ** 20

/**
 * Fills the pool with the patterns that matter: column generation (Gilmore and Gomory, Multistage cutting stock
 * problems of two and more dimensions, Oper. Res. 13 (1965) 94–120). The program says what each piece is worth with the
 * patterns so far, and a knapsack over each sheet whether any other pattern is worth more than the sheet.
 *
 * @param problem what is still to be cut of the task's problem.
 * @param enough a bound from which on to stop.
 */
export function generateColumns(
  { sheets, pool, solver }: Task,
  problem: Problem,
  goal: Goal,
  work: Work,
  enough?: (bound: Fraction) => boolean,
): Relaxed {
  let bound = new Fraction(0)
  let dear: Dear | undefined
  for (;;) {
    const program = masterProgram(problem, pool.patterns, goal, false)
    const solved = solver(program)
    work.spend(program.columns.length * program.rows.length * 100)
    const relaxed = (values: readonly number[], ended: boolean): Relaxed => ({
      bound,
      values,
      ended,
      ...(dear && { dear }),
    })
    if (!solved) return relaxed([], false)
    const prices = pricesOf(solved.duals, problem)
    const before = pool.patterns.length
    const worth = sheets.map(
      (_, shape) => Math.max(0, (solved.duals[problem.counts.length + shape] ?? 0) * parts) + little,
    )
    const ceilings = sheets.map((sheet, shape) => {
      const { boxes, ceiling } = price(sheet, prices.values, problem, worth[shape] ?? 0, work)
      for (const box of boxes) pool.add(shape, box, problem.counts)
      return ceiling
    })
    const proven = lowerBound(problem, goal, prices, ceilings)
    if (proven.gt(bound)) {
      bound = proven
      dear = { prices, ceilings }
    }
    const ended = ceilings.every((ceiling, shape) => ceiling <= (worth[shape] ?? 0))
    if (pool.patterns.length === before || work.over || enough?.(bound)) return relaxed(solved.values, ended)
  }
}
