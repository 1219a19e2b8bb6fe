import { type Length, same, shorter } from '../../../length/length.ts'
import type { Point, Polygon, Segment } from '../../structure.ts'

/** Whether a level or upright line lies within an outline of level and upright edges, without touching it. */
export function isInside({ from, to }: Segment, outline: Polygon): boolean {
  const edges = outline.map(
    (start, i): Segment => ({ from: start, to: outline[(i + 1) % outline.length] ?? start }),
  )
  return isWithin(from, edges) && !edges.some((edge) => touch({ from, to }, edge))
}

/** Whether two level or upright lines have a point in common. */
const touch = (a: Segment, b: Segment): boolean =>
  (['x', 'y'] as const).every((axis) => {
    const [[a1, a2], [b1, b2]] = [a, b].map(({ from, to }) => sorted(from[axis], to[axis])) as [Pair, Pair]
    return a1.lte(b2) && b1.lte(a2)
  })

type Pair = readonly [Length, Length]
const sorted = (a: Length, b: Length): Pair => (shorter(b, a) ? [b, a] : [a, b])

/** By counting the upright edges to the right of a point. */
function isWithin({ x, y }: Point, edges: readonly Segment[]): boolean {
  const right = edges.filter(
    ({ from, to }) => same(from.x, to.x) && shorter(x, from.x) && shorter(y, from.y) !== shorter(y, to.y),
  )
  return right.length % 2 === 1
}
