import { type Batch, exactly } from './exact-uses.ts'
import type { Pattern, Problem } from './problem.ts'
import type { Column, Program, Solver } from './solver.ts'
import type { Work } from './work.ts'

/** Patterns that are tried, and branches that are looked at. */
const mostPatterns = 120
const nodes = 100

/**
 * Plans the same sheets anew with a charge for every pattern that is used at all, however often, by branch and bound.
 *
 * @param sheets of each shape, at most.
 */
export function withCharge(
  { counts, shapes }: Pick<Problem, 'counts' | 'shapes'>,
  sheets: readonly number[],
  patterns: readonly Pattern[],
  solver: Solver,
  work: Work,
): Batch[] | undefined {
  const tried = patterns.slice(0, mostPatterns)
  const program = chargedProgram(counts, sheets, tried, shapes.length)
  work.spend(program.columns.length * program.rows.length * 5000)
  const solved = solver(program, { nodes, restart: false })
  if (!solved) return undefined
  const uses = tried.flatMap((pattern, i) => {
    const times = Math.round(solved.values[i] ?? 0)
    return times > 0 ? [{ pattern, times }] : []
  })
  return exactly(uses, counts)
}

/** Columns: how often each pattern, and whether it is used. Rows: kinds, shapes, patterns. */
function chargedProgram(
  counts: readonly number[],
  sheets: readonly number[],
  patterns: readonly Pattern[],
  shapes: number,
): Program {
  const [none, endless] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  const patternRow = counts.length + shapes
  const often = patterns.map(({ counts: held, shape }) => {
    const enough = held.map((count, kind) => (count > 0 ? Math.ceil((counts[kind] ?? 0) / count) : 0))
    return Math.min(sheets[shape] ?? 0, Math.max(...enough))
  })
  return {
    rows: [
      ...counts.map((count) => ({ least: count, most: endless })),
      ...Array.from({ length: shapes }, (_, shape) => ({ least: 0, most: sheets[shape] ?? 0 })),
      ...patterns.map(() => ({ least: none, most: 0 })),
    ],
    columns: [
      ...patterns.map(
        (pattern, i): Column => ({
          cost: 0,
          most: often[i] ?? 0,
          whole: true,
          shares: [
            ...pattern.counts.flatMap((count, kind) => (count > 0 ? [[kind, count] as const] : [])),
            [counts.length + pattern.shape, 1],
            [patternRow + i, 1],
          ],
        }),
      ),
      ...patterns.map(
        (_, i): Column => ({ cost: 1, most: 1, whole: true, shares: [[patternRow + i, -(often[i] ?? 0)]] }),
      ),
    ],
  }
}
