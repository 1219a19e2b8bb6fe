import { generateColumns } from './columns.ts'
import type { Goal } from './master.ts'
import { leftAfter, type Problem, type Use } from './problem.ts'
import { suppliesAfter } from './supplies.ts'
import type { Task } from './task.ts'
import type { Work } from './work.ts'

/**
 * Takes from the fractional plan what is whole in it, and else one sheet of what comes nearest to a whole one, and plans
 * the rest anew with patterns of its own, until nothing is left.
 */
export function dive(task: Task, goal: Goal, work: Work): Use[] {
  const uses: Use[] = []
  let left: Problem = task.problem
  while (left.counts.some((count) => count > 0)) {
    const { values } = generateColumns(task, left, goal, work)
    const shares = task.pool.patterns.map((pattern, i) => ({
      pattern,
      share: values[left.supplies.length + i] ?? 0,
    }))
    const whole = shares.flatMap(({ pattern, share }) => {
      const times = Math.floor(share + tiny)
      return times > 0 ? [{ pattern, times }] : []
    })
    const nearest = shares.reduce<(typeof shares)[number] | undefined>(
      (best, one) => (one.share > (best?.share ?? tiny) + tiny ? one : best),
      undefined,
    )
    const taken = whole.length > 0 ? whole : nearest ? [{ pattern: nearest.pattern, times: 1 }] : []
    if (taken.length === 0 || work.over) return uses
    uses.push(...taken)
    left = {
      ...left,
      counts: leftAfter(left.counts, taken),
      supplies: suppliesAfter(left.supplies, taken),
    }
  }
  return uses
}

/** Fractions nearer to each other than this are the same. */
const tiny = 1e-6
