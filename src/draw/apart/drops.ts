import type { Plate, Structure } from '../../card/structure.ts'
import { covers } from '../../fold/assembly.ts'
import type { Pose, Vector } from '../../fold/pose.ts'
import { sum } from '../../fold/space.ts'
import { type Camera, project } from '../camera.ts'
import { type Flat, flatLoop } from '../plane.ts'
import { dot, inSpace, less } from '../space.ts'
import type { Hold } from './parts.ts'

type Line = readonly [Vector, Vector]

/**
 * Where the corners of what is stuck on touch what it is stuck to: from each the way to where it lands.
 *
 * @param offset how far the sheet of a plate is lifted.
 */
export function dropsOf(
  { plates }: Structure,
  holds: readonly Hold[],
  pose: Pose,
  offset: (plate: string) => Vector,
): Line[] {
  const plateOf = (name: string): Plate | undefined => plates.find((plate) => plate.name === name)
  return holds.flatMap(({ bond }): Line[] => {
    const [upper, lower] = [plateOf(bond.plate), plateOf(bond.onto)]
    if (!upper || !lower) return []
    const found = contact(upper, lower, pose)
    const corners = found.length > 0 ? found : contact(lower, upper, pose)
    const [from, to] = [offset(bond.plate), offset(bond.onto)]
    return corners.map((at): Line => [sum(at, from), sum(at, to)])
  })
}

/** How far beside an edge a corner may lie that is still on it, in mm: sheets slant by their thickness. */
const beside = 0.6

/** The outermost corners of a plate that lie on another, four at most. */
function contact(plate: Plate, on: Plate, pose: Pose): Vector[] {
  const [at, base] = [pose.get(plate.name), pose.get(on.name)]
  if (!at || !base) return []
  const loop = flatLoop(on.outline)
  const corners = flatLoop(plate.outline).map((p) => inSpace(at, p))
  const flat = corners.map((corner): Flat => {
    const d = less(corner, base.origin)
    return [dot(d, base.right), dot(d, base.up)]
  })
  const touching = flat.flatMap((p, i) => (isOn(p, loop) ? [i] : []))
  const farthest = ([sx, sy]: Flat): number | undefined =>
    touching.reduce<number | undefined>((best, i) => {
      const value = (k: number) => (flat[k]?.[0] ?? 0) * sx + (flat[k]?.[1] ?? 0) * sy
      return best === undefined || value(i) > value(best) + 1e-6 ? i : best
    }, undefined)
  const chosen = new Set(
    (
      [
        [1, 1],
        [1, -1],
        [-1, 1],
        [-1, -1],
      ] as const
    ).flatMap((way) => farthest(way) ?? []),
  )
  return corners.filter((_, i) => chosen.has(i))
}

/** Whether a point is inside a loop or all but on its edge. */
const isOn = ([x, y]: Flat, loop: readonly Flat[]): boolean =>
  [-beside, 0, beside].some((dx) => [-beside, 0, beside].some((dy) => covers([loop], x + dx, y + dy)))

/** Lines that run along one another, as one. */
export function withoutDoubles(lines: readonly Line[], camera: Camera): Line[] {
  const left = [...lines].filter(([a, b]) => Math.hypot(...less(a, b)) > 0.2)
  const joined: Line[] = []
  for (let line = left.shift(); line; line = left.shift()) {
    const other = left.findIndex((one) => isAlong(line as Line, one, camera))
    if (other < 0) joined.push(line)
    else left.push(union(line, left.splice(other, 1)[0] as Line, camera))
  }
  return joined
}

/** Whether two lines lie over one another on the paper, at least in part. */
function isAlong([a, b]: Line, [c, d]: Line, camera: Camera): boolean {
  const [p, q, r, s] = [a, b, c, d].map((v) => project(camera, v, 1)) as [Flat, Flat, Flat, Flat]
  const long = Math.hypot(q[0] - p[0], q[1] - p[1])
  if (long < 1e-6) return false
  const [ux, uy] = [(q[0] - p[0]) / long, (q[1] - p[1]) / long]
  const aside = (t: Flat): number => Math.abs((t[0] - p[0]) * uy - (t[1] - p[1]) * ux)
  const far = (t: Flat): number => (t[0] - p[0]) * ux + (t[1] - p[1]) * uy
  if (Math.max(aside(r), aside(s)) > 0.8) return false
  return Math.min(far(r), far(s)) < long && Math.max(far(r), far(s)) > 0
}

/** From the first end of both to the last. */
function union(a: Line, b: Line, camera: Camera): Line {
  const ends = [...a, ...b]
  const [from, to] = [project(camera, a[0], 1), project(camera, a[1], 1)]
  const far = (v: Vector): number => {
    const [x, y] = project(camera, v, 1)
    return (x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1])
  }
  const sorted = [...ends].sort((p, q) => far(p) - far(q))
  return [sorted[0] ?? a[0], sorted.at(-1) ?? a[1]]
}
