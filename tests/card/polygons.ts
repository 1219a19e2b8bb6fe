import type { Point, Polygon, Segment } from '../../src/card/structure.ts'
import { toMm } from '../../src/length/length.ts'

type XY = readonly [number, number]
type Triangle = readonly [XY, XY, XY]

/** Points nearer than this are one, in mm. */
const near = 1e-6
const xy = ({ x, y }: Point): XY => [toMm(x), toMm(y)]
const cross = ([ax, ay]: XY, [bx, by]: XY, [cx, cy]: XY): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax)

/** Area within an outline, in mm². */
export const areaOf = (polygon: Polygon): number => Math.abs(sum(fan(polygon).map(signedArea)))

/**
 * Area that two outlines share, in mm²: each is a sum of triangles that count for or against it, so what they share is
 * the sum over all pairs of triangles.
 */
export function sharedArea(a: Polygon, b: Polygon): number {
  const shares = fan(a).flatMap((s) =>
    fan(b).map((t) => {
      const sign = Math.sign(signedArea(s)) * Math.sign(signedArea(t))
      return sign === 0 ? 0 : sign * Math.abs(clippedArea(s, t))
    }),
  )
  return Math.abs(sum(shares))
}

/** Points spread over a line, its ends among them. */
export const pointsOn = ({ from, to }: Segment): XY[] =>
  [0, 0.013, 0.21, 0.37, 0.5, 0.68, 0.83, 0.991, 1].map((t): XY => {
    const [[x0, y0], [x1, y1]] = [xy(from), xy(to)]
    return [x0 + t * (x1 - x0), y0 + t * (y1 - y0)]
  })

/** Whether a point lies on a line between its ends. */
export function liesOn(point: XY, { from, to }: Segment): boolean {
  const [a, b] = [xy(from), xy(to)]
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const t = ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / (dx * dx + dy * dy || 1)
  const at = Math.min(1, Math.max(0, t))
  return Math.hypot(point[0] - a[0] - at * dx, point[1] - a[1] - at * dy) < near
}

export const edgesOf = (polygon: Polygon): Segment[] =>
  polygon.flatMap((to, i) => {
    const from = polygon.at(i - 1)
    return from ? [{ from, to }] : []
  })

function fan(polygon: Polygon): Triangle[] {
  const [first = [0, 0], ...rest] = polygon.map(xy)
  return rest.slice(1).map((point, i): Triangle => [first as XY, rest[i] as XY, point])
}

const signedArea = ([a, b, c]: Triangle): number => cross(a, b, c) / 2

/** Cuts one triangle by the three sides of the other. */
function clippedArea(one: Triangle, other: Triangle): number {
  const [a, b, c] = signedArea(other) < 0 ? [other[0], other[2], other[1]] : other
  let shape: XY[] = [...one]
  for (const [from, to] of [
    [a, b],
    [b, c],
    [c, a],
  ] as const)
    shape = shape.flatMap((point, i) => {
      const before = shape.at(i - 1) as XY
      const [d0, d1] = [cross(from, to, before), cross(from, to, point)]
      const t = d0 / (d0 - d1 || 1)
      const crossing: XY = [before[0] + t * (point[0] - before[0]), before[1] + t * (point[1] - before[1])]
      return [...(d0 < 0 !== d1 < 0 ? [crossing] : []), ...(d1 >= 0 ? [point] : [])]
    })
  const [start = [0, 0] as XY, ...more] = shape
  return sum(more.slice(1).map((point, i) => signedArea([start, more[i] as XY, point])))
}

const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0)
