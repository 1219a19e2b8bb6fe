import { limitedValue, limitedWork } from './limited-value.ts'
import { whole } from './pricing.ts'
import { leftAfter, type Pattern, type Problem, type Use } from './problem.ts'
import type { Task } from './task.ts'

/** What a mark of paper is worth to begin with: enough for values to stay whole numbers when they are corrected. */
const worth = 1000

/** What the pieces are worth before anything is known: their paper. */
export const firstValues = ({ areas }: Problem): number[] => areas.map((area) => area * worth)

/**
 * Fills one sheet after the other with what is worth most of what is still wanted. After each sheet its pieces are worth
 * more if it was filled badly, so that in the next round they come first: sequential value correction (E. A. Mukhacheva
 * and A. S. Mukhacheva, J. Math. Sci. 124 (2004) 4930–4938; G. Belov and G. Scheithauer, Oper. Res. 171 (2006) 85–106).
 *
 * @param values of the kinds, which are corrected in place.
 * @returns the sheets, which leave pieces out when there are too few of them.
 */
export function fillSheets({ problem, sheets, pool, work }: Task, values: number[]): Use[] {
  const { supplies, counts, areas } = problem
  const uses: Use[] = []
  const had = supplies.map(({ limit }) => limit)
  let left = [...counts]
  while (left.some((count) => count > 0)) {
    const rounded = values.map(Math.round)
    const filled = sheets.map((sheet, shape) => {
      if (!supplies.some((supply, i) => supply.shape === shape && (had[i] ?? 0) > 0)) return undefined
      work.spend(limitedWork(sheet.grid, left))
      return pool.add(shape, whole(sheet.grid, limitedValue(sheet.grid, rounded, left), left), left)
    })
    // Offcuts before sheets; of sheets the one that takes most paper's worth, and of those the cheapest.
    const [offer] = supplies
      .flatMap((supply, i) => {
        const pattern = filled[supply.shape]
        return pattern && (had[i] ?? 0) > 0 ? [{ ...supply, i, pattern, paper: paperIn(pattern, areas) }] : []
      })
      .sort(
        (a, b) =>
          Number(a.counted) - Number(b.counted) || b.paper - a.paper || a.price - b.price || a.i - b.i,
      )
    if (!offer) return uses
    const { i, pattern } = offer
    const times = Math.min(had[i] ?? 0, timesIn(pattern, left))
    had[i] = (had[i] ?? 0) - times
    uses.push({ pattern, times })
    left = leftAfter(left, uses.slice(-1))
    correct(values, offer.pattern, times, problem)
  }
  return uses
}

/** How often a pattern goes into what is wanted without surplus. */
const timesIn = ({ counts }: Pattern, left: readonly number[]): number =>
  counts.reduce(
    (least, count, kind) => (count > 0 ? Math.min(least, Math.floor((left[kind] ?? 0) / count)) : least),
    Number.POSITIVE_INFINITY,
  )

const paperIn = ({ counts }: Pattern, areas: readonly number[]): number =>
  counts.reduce((sum, count, kind) => sum + count * (areas[kind] ?? 0), 0)

function correct(
  values: number[],
  pattern: Pattern,
  times: number,
  { areas, counts, shapes }: Problem,
): void {
  const { width = 1, height = 1 } = shapes[pattern.shape] ?? {}
  const spoilt = (width * height) / paperIn(pattern, areas)
  for (const [kind, count] of pattern.counts.entries()) {
    if (count === 0) continue
    const share = (count * times) / ((counts[kind] ?? 1) + count * times)
    values[kind] = (values[kind] ?? 0) * (1 - share) + share * (areas[kind] ?? 0) * worth * spoilt
  }
}
