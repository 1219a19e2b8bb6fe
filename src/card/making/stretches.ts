import { type Length, larger, same, shorter, smaller } from '../../length/length.ts'
import { point } from '../strip.ts'
import type { Polygon } from '../structure.ts'

/** From one length to another. */
export interface Run {
  readonly from: Length
  readonly to: Length
}

/** A stretch of the height, `from` one level `to` another, in which a plate reaches from `left` to `right`. */
export interface Stretch extends Run {
  readonly left: Length
  readonly right: Length
}

/** The outline of a plate that consists of stretches, from the lowest to the highest: counter-clockwise. */
export function outlineOf(stretches: readonly Stretch[]): Polygon {
  const right = stretches.flatMap(({ from, to, right: x }) => [point(x, from), point(x, to)])
  const left = stretches.flatMap(({ from, to, left: x }) => [point(x, from), point(x, to)])
  return cornersOf([...right, ...left.reverse()])
}

/** An outline of upright and level edges, with a corner only where it turns. */
export const cornersOf = (outline: Polygon): Polygon =>
  outline.filter((p, i) => {
    const [before, after] = [outline.at(i - 1) ?? p, outline[(i + 1) % outline.length] ?? p]
    const alike = (of: 'x' | 'y') => same(before[of], p[of]) && same(p[of], after[of])
    return !alike('x') && !alike('y')
  })

/** At which levels one plate ends at `x` and another begins there. */
export function sharedAt(x: Length, one: readonly Stretch[], other: readonly Stretch[]): Run[] {
  const [before, behind] = [one.filter((s) => same(s.right, x)), other.filter((s) => same(s.left, x))]
  const shared = before.flatMap((a) =>
    behind.map((b) => ({ from: larger(a.from, b.from), to: smaller(a.to, b.to) })),
  )
  return joinedRuns(shared.filter(({ from, to }) => shorter(from, to)))
}

/** The same runs in ascending order, those that touch or overlap as one. */
export function joinedRuns(runs: readonly Run[]): Run[] {
  const all: { from: Length; to: Length }[] = []
  for (const { from, to } of [...runs].sort((a, b) => a.from.compare(b.from))) {
    const last = all.at(-1)
    if (last && !shorter(last.to, from)) last.to = larger(last.to, to)
    else all.push({ from, to })
  }
  return all
}

/** Each length once. */
export const ascending = (all: readonly Length[]): Length[] => {
  const sorted = [...all].sort((a, b) => a.compare(b))
  return sorted.filter((x, i) => i === 0 || !same(x, sorted[i - 1] ?? x))
}
