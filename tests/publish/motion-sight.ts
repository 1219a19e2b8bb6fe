import type { Structure } from '../../src/card/structure.ts'
import type { Placement, Pose, Vector } from '../../src/fold/pose.ts'

/** How the page says that it looks at the card: `data-view`, and the size of its picture in dots. */
export interface View {
  readonly turn: number
  readonly rise: number
  readonly scale: number
  readonly middle: Vector
  readonly width: number
  readonly height: number
}

/** A point in space as it is seen: turned about the upright axis, tipped forward, and its nearness to the eye. */
export function seen([x, y, z]: Vector, { turn, rise, scale, middle, width, height }: View) {
  const [a, b] = [(turn * Math.PI) / 180, (rise * Math.PI) / 180]
  const [dx, dy, dz] = [x - middle[0], y - middle[1], z - middle[2]]
  const [tx, tz] = [dx * Math.cos(a) + dz * Math.sin(a), dz * Math.cos(a) - dx * Math.sin(a)]
  const [ty, near] = [dy * Math.cos(b) - tz * Math.sin(b), dy * Math.sin(b) + tz * Math.cos(b)]
  return { x: width / 2 + tx * scale, y: height / 2 - ty * scale, near }
}

type Flat = readonly [number, number]

/** A plate as it is seen. */
export interface SeenPlate {
  readonly name: string
  readonly piece: string
  /** Corners in dots. */
  readonly corners: readonly Flat[]
  readonly holes: readonly (readonly Flat[])[]
  /** Nearness to the eye as `a + b x + c y` in dots. */
  readonly plane: readonly [number, number, number]
  readonly faceUp: boolean
  /** Left, top, right and bottom of all of it. */
  readonly box: readonly [number, number, number, number]
}

/** All plates of a pose that are not seen along their edge. */
export function seenPlates(structure: Structure, pose: Pose, view: View): SeenPlate[] {
  return structure.plates.flatMap((plate): SeenPlate[] => {
    const place = pose.get(plate.name)
    if (!place) return []
    const spot = (x: number, y: number) => seen(at(place, x, y), view)
    const loop = (points: typeof plate.outline): Flat[] =>
      points.map((p) => {
        const { x, y } = spot(p.x.valueOf(), p.y.valueOf())
        return [x, y]
      })
    const [o, u, v] = [spot(0, 0), spot(10, 0), spot(0, 10)]
    const turn = (u.x - o.x) * (v.y - o.y) - (u.y - o.y) * (v.x - o.x)
    if (Math.abs(turn) < 20) return []
    const [du, dv] = [u.near - o.near, v.near - o.near]
    const b = (du * (v.y - o.y) - dv * (u.y - o.y)) / turn
    const c = (dv * (u.x - o.x) - du * (v.x - o.x)) / turn
    const corners = loop(plate.outline)
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)]
    return [
      {
        box: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)],
        name: plate.name,
        piece: plate.piece,
        corners,
        holes: plate.holes.map(loop),
        plane: [o.near - b * o.x - c * o.y, b, c],
        // On the screen y goes down.
        faceUp: turn < 0,
      },
    ]
  })
}

const at = ({ origin, right, up }: Placement, x: number, y: number): Vector => [
  origin[0] + right[0] * x + up[0] * y,
  origin[1] + right[1] * x + up[1] * y,
  origin[2] + right[2] * x + up[2] * y,
]

export const near = ({ plane: [a, b, c] }: SeenPlate, [x, y]: Flat): number => a + b * x + c * y

/** The plates at a dot of the picture, the nearest first. */
export const platesAt = (plates: readonly SeenPlate[], spot: Flat): SeenPlate[] =>
  plates
    .filter(
      ({ box: [left, top, right, bottom] }) =>
        spot[0] > left && spot[0] < right && spot[1] > top && spot[1] < bottom,
    )
    .filter(({ corners, holes }) => inside(spot, corners) && !holes.some((hole) => inside(spot, hole)))
    .sort((p, q) => near(q, spot) - near(p, spot))

/** By the angles under which the corners are seen: they add up to a whole turn inside, to nothing outside. */
function inside([x, y]: Flat, loop: readonly Flat[]): boolean {
  let sum = 0
  for (const [i, [px, py]] of loop.entries()) {
    const [qx, qy] = loop[(i + 1) % loop.length] as Flat
    const [ax, ay, bx, by] = [px - x, py - y, qx - x, qy - y]
    sum += Math.atan2(ax * by - ay * bx, ax * bx + ay * by)
  }
  return Math.abs(sum) > Math.PI
}
