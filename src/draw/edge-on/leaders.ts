import type { Target } from './names.ts'

/** A line from a name to what it names: dots where it points, all at one place along the paper. */
export interface Drop {
  readonly x: number
  /** Heights of the dots, z upwards. */
  readonly dots: readonly number[]
}

/** Between two lines that run side by side, in mm. */
export const beside = 1.1

/**
 * The lines that a name may have, the best first: one with a dot for each of its targets where all of them lie over one
 * another; else one for each that lies apart.
 */
export function dropsFor(targets: readonly Target[]): Drop[][] {
  const groups: Target[][] = []
  for (const target of [...targets].sort((a, b) => a.from - b.from)) {
    const group = groups.at(-1)
    if (group && commonOf([...group, target])) group.push(target)
    else groups.push([target])
  }
  const at = (group: readonly Target[], share: number): Drop => {
    const [from, to] = commonOf(group) ?? [0, 0]
    const x = from + (to - from) * share
    return { x, dots: group.map(({ z }) => z(x)) }
  }
  const [first] = groups
  if (!first) return []
  const [from, to] = commonOf(first) ?? [0, 0]
  const shares = sharesOf(groups.length > 1 ? 0 : to - from)
  // Lines of one name that lie apart are as far from the middle of it all on both sides.
  const mirrored = (i: number, share: number): number => (i < groups.length / 2 ? share : 1 - share)
  return shares.map((share) => groups.map((group, i) => at(group, mirrored(i, share))))
}

/** Shares of a stretch, the middle first; on a long one as many as there is room for lines side by side. */
function sharesOf(long: number): number[] {
  const count = 2 * Math.min(16, Math.max(6, Math.round(long / (2 * beside))))
  const all = Array.from({ length: count + 1 }, (_, i) => i / count)
  return all.sort((a, b) => Math.abs(a - 0.5) - Math.abs(b - 0.5))
}

/** What several stretches have in common, if that is long enough to point at. */
function commonOf(targets: readonly Target[]): readonly [number, number] | undefined {
  const [from, to] = [Math.max(...targets.map((t) => t.from)), Math.min(...targets.map((t) => t.to))]
  return to - from > (targets.length > 1 ? 1.5 : 0) ? [from, to] : undefined
}
