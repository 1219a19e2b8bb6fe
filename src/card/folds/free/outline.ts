import { same, shorter } from '../../../length/length.ts'
import { point } from '../../strip.ts'
import type { Point, Polygon } from '../../structure.ts'
import { type Box, stretchOf } from './box.ts'
import { type Along, acrossOf } from './written.ts'

/**
 * The outline round rectangles that lie against each other in a row across a strip's direction, counter-clockwise: up
 * the far ends of all, and back along the near ones.
 */
export function outlineOf(boxes: readonly Box[], along: Along): Polygon {
  const row = [...boxes].sort((a, b) => (shorter(start(a, along), start(b, along)) ? -1 : 1))
  const corners = (end: 'from' | 'to', order: readonly Box[]): Point[] =>
    order.flatMap((box) => {
      const [u, { from, to }] = [stretchOf(box, along)[end], stretchOf(box, acrossOf(along))]
      const [v1, v2] = end === 'to' ? [from, to] : [to, from]
      return along === 'width' ? [point(u, v1), point(u, v2)] : [point(v1, u), point(v2, u)]
    })
  const loop = [...corners('to', row), ...corners('from', [...row].reverse())]
  return fromLowerLeft(withoutFlat(along === 'width' ? loop : loop.reverse()))
}

const start = (box: Box, along: Along) => stretchOf(box, acrossOf(along)).from

/** Without points that the outline does not turn at. */
const withoutFlat = (loop: readonly Point[]): Point[] =>
  loop.filter((here, i) => {
    const [before, after] = [loop.at(i - 1) ?? here, loop[(i + 1) % loop.length] ?? here]
    const inLine = (of: (p: Point) => Point['x']) => same(of(before), of(here)) && same(of(here), of(after))
    return !inLine(({ x }) => x) && !inLine(({ y }) => y)
  })

function fromLowerLeft(loop: readonly Point[]): Polygon {
  const lower = (a: Point, b: Point): boolean => (same(a.y, b.y) ? shorter(a.x, b.x) : shorter(a.y, b.y))
  const first = loop.reduce((best, p, i) => (lower(p, loop[best] ?? p) ? i : best), 0)
  return [...loop.slice(first), ...loop.slice(0, first)]
}
