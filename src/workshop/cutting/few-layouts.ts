import { type Batch, merged } from './exact-uses.ts'
import type { Pattern } from './problem.ts'
import type { Work } from './work.ts'

/** Steps that comparing one pattern costs, and patterns that are tried. */
const patternSteps = 50
const mostPatterns = 120
/** Layouts up to which all ways are looked for. */
const mostSearched = 3

/**
 * The same pieces from no more sheets of each shape with fewer layouts: first with one, then with two, and so on, each
 * as often as it goes. What is left for the last layout must come out of equal sheets. (Fewest layouts is hard in itself:
 * C. McDiarmid, Pattern minimisation in cutting stock problems, Discrete Appl. Math. 98 (1999) 121–130.)
 *
 * @param batches the sheets as they are.
 * @param sheets of each shape, at most.
 * @param patterns that layouts may be taken from, whole or in part.
 */
export function fewestLayouts(
  batches: readonly Batch[],
  sheets: readonly number[],
  patterns: readonly Pattern[],
  work: Work,
): Batch[] {
  const kinds = batches[0]?.counts.length ?? 0
  const wanted = Array.from({ length: kinds }, (_, kind) =>
    batches.reduce((sum, { counts, times }) => sum + times * (counts[kind] ?? 0), 0),
  )
  const best = merged(batches)
  for (let layouts = 1; layouts < Math.min(best.length, mostSearched + 1) && !work.over; layouts++) {
    const found = cutWith(layouts, wanted, sheets, patterns, work)
    if (found) return merged(found)
  }
  return best
}

/** The pieces cut with so many layouts, or undefined. */
function cutWith(
  layouts: number,
  left: readonly number[],
  sheets: readonly number[],
  patterns: readonly Pattern[],
  work: Work,
): Batch[] | undefined {
  if (work.over) return undefined
  work.spend(patterns.length * patternSteps)
  if (layouts === 1) return lastLayout(left, sheets, patterns)
  for (const { shape, counts } of patterns) {
    const there = sheets[shape] ?? 0
    for (const times of timesToTry(counts, left, there)) {
      const some = counts.map((count, kind) => Math.min(count, Math.floor((left[kind] ?? 0) / times)))
      const after = left.map((count, kind) => count - times * (some[kind] ?? 0))
      const others = sheets.map((count, i) => (i === shape ? count - times : count))
      const rest = after.every((count) => count === 0)
        ? []
        : cutWith(layouts - 1, after, others, patterns, work)
      if (rest) return [{ shape, counts: some, times }, ...rest]
    }
  }
  return undefined
}

/** How often to try a layout: as often as it goes whole, or a little less; or for all that is left of its sheets. */
function timesToTry(counts: readonly number[], left: readonly number[], there: number): number[] {
  const often = counts.flatMap((count, kind) => {
    const want = left[kind] ?? 0
    return count > 0 && want > 0 ? [Math.floor(want / count), Math.ceil(want / count)] : []
  })
  return [
    ...new Set([...often, there, there - 1, there - 2].filter((times) => times > 0 && times <= there)),
  ].sort((a, b) => b - a)
}

/** All that is left from equal sheets, if that goes. */
function lastLayout(
  left: readonly number[],
  sheets: readonly number[],
  patterns: readonly Pattern[],
): Batch[] | undefined {
  for (const { shape, counts } of patterns)
    for (let times = sheets[shape] ?? 0; times > 0; times--)
      if (left.every((want, kind) => want % times === 0 && want / times <= (counts[kind] ?? 0)))
        return [{ shape, counts: left.map((want) => want / times), times }]
  return undefined
}

/** Those of the patterns whose sheets are used, the fullest first: what another holds too is left out. */
export function useful(
  patterns: readonly Pattern[],
  sheets: readonly number[],
  batches: readonly Batch[],
): Pattern[] {
  const there = patterns.filter(({ shape }) => (sheets[shape] ?? 0) > 0)
  const inUse = ({ shape, counts }: Pattern): boolean =>
    batches.some((batch) => batch.shape === shape && batch.counts.every((n, kind) => n === counts[kind]))
  const size = ({ counts }: Pattern): number => counts.reduce((sum, count) => sum + count, 0)
  return there
    .filter(
      (one, i) => !there.some((other, k) => k !== i && holds(other, one) && (!holds(one, other) || k < i)),
    )
    .sort((a, b) => Number(inUse(b)) - Number(inUse(a)) || size(b) - size(a))
    .slice(0, mostPatterns)
}

const holds = (a: Pattern, b: Pattern): boolean =>
  a.shape === b.shape && b.counts.every((count, kind) => count <= (a.counts[kind] ?? 0))
