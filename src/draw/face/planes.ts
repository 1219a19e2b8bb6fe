import type { Vector } from '../../fold/pose.ts'
import { sum } from '../../fold/space.ts'
import { dot, less } from '../space.ts'
import { type Corner, type Face, over } from './face.ts'

/** Planes nearer than this, in mm, are one. */
const flush = 0.05

/** Whether two plates of a piece lie in one plane: a sheet that has not been folded there. */
export const inOnePlane = (face: Face, other: Face): boolean =>
  other !== face &&
  other.piece === face.piece &&
  other.plate !== face.plate &&
  dot(face.place.normal, other.place.normal) > 0.9999 &&
  other.outline.every(({ at }) => Math.abs(over(face, at)) < flush)

/** Whether an edge of the loop runs along the whole of a straight line. */
export const runsAlong = (loop: readonly Corner[], from: Vector, to: Vector): boolean =>
  loop.some((corner, i) => {
    const start = corner.at
    const whole = less((loop[(i + 1) % loop.length] ?? corner).at, start)
    const long = Math.hypot(...whole)
    return [from, to].every((p) => {
      const way = less(p, start)
      const along = dot(way, whole) / long
      const aside = Math.sqrt(Math.max(0, dot(way, way) - along * along))
      return aside < flush && along > -flush && along < long + flush
    })
  })

/** Whether a sheet lies on another, as far as their planes tell: on which side does not matter. */
export const liesOn = (other: Face, face: Face): boolean =>
  other.plate !== face.plate &&
  Math.abs(dot(face.place.normal, other.place.normal)) > 0.9999 &&
  Math.abs(over(face, other.place.origin)) < 1.5

/** Whether another sheet covers what is so near to an edge of a face, along most of it. */
export function liesBeside(other: Face, face: Face, from: Vector, to: Vector, near: number): boolean {
  const edge = less(to, from)
  const { right, up } = face.place
  const long = Math.hypot(...edge) || 1
  const middle = face.outline.reduce<Vector>(
    (all, { at }) => sum(all, at, 1 / face.outline.length),
    [0, 0, 0],
  )
  const [x, y] = [-dot(edge, up) / long, dot(edge, right) / long]
  const across = sum(sum([0, 0, 0], right, x), up, y)
  const way = dot(less(middle, from), across) < 0 ? -near : near
  const covered = [0.2, 0.5, 0.8].filter((share) => holds(other, sum(sum(from, edge, share), across, way)))
  return covered.length > 1
}

/** Whether a point lies over a face and none of its windows. */
function holds({ outline, holes, place: { right, up } }: Face, p: Vector): boolean {
  const [x, y] = [dot(p, right), dot(p, up)]
  const isIn = (loop: readonly Corner[]): boolean =>
    loop.filter(({ at }, i) => {
      const next = (loop[(i + 1) % loop.length] as Corner).at
      const [x1, y1, x2, y2] = [dot(at, right), dot(at, up), dot(next, right), dot(next, up)]
      return y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)
    }).length %
      2 ===
    1
  return isIn(outline) && !holes.some(isIn)
}
