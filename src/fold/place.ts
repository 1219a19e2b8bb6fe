import type { Display } from '../card/structure.ts'
import { applyLinear } from './affine.ts'
import type { Assembly } from './assembly.ts'
import { mmOf } from './joints.ts'
import type { Placement, Vector } from './pose.ts'
import { along, dot, spotAt, sum } from './space.ts'

/** A turn in space: its rows. */
type Turn = readonly [Vector, Vector, Vector]

const turned = (rows: Turn, v: Vector): Vector => [dot(rows[0], v), dot(rows[1], v), dot(rows[2], v)]

/**
 * Where the plates are, when their bodies are at `frames`; in mm.
 *
 * @param heights how far each plate lies in front of the middle of its body.
 */
export function placed(
  assembly: Assembly,
  frames: readonly Placement[],
  heights: readonly number[],
): Placement[] {
  const mm = mmOf(assembly)
  const length = 1 / Math.sqrt(assembly.norm)
  return assembly.plates.flatMap(({ body, map, over }, i): Placement[] => {
    const frame = frames[body]
    if (!frame) return []
    const axis = (x: number, y: number): Vector => {
      const [u, v] = applyLinear(map, [x, y])
      return along(frame, u * length, v * length)
    }
    const [x, y, z] = frame.normal
    return [
      {
        origin: sum(spotAt(frame, map.e * mm, map.f * mm), frame.normal, heights[i] ?? 0),
        right: axis(1, 0),
        up: axis(0, 1),
        normal: over ? [-x, -y, -z] : frame.normal,
      },
    ]
  })
}

/** Turns the card so that the shown plate lies on the table with its face up, or stands upright facing the viewer. */
export function viewOf(
  shown: Placement,
  { rests, turn }: Pick<Display, 'rests' | 'turn'>,
): (placement: Placement) => Placement {
  const angle = (turn * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  // Where the shown plate's x, y and face go: before and after the turn about the vertical.
  const upright = rests === 'upright'
  const ends = ([[1, 0, 0], upright ? [0, 1, 0] : [0, 0, -1], upright ? [0, 0, 1] : [0, 1, 0]] as const).map(
    ([x, y, z]): Vector => [x * cos + z * sin, y, z * cos - x * sin],
  )
  const [x = [1, 0, 0], y = [0, 1, 0], z = [0, 0, 1]] = ends
  return movedTo(shown, { origin: [0, 0, 0], right: x, up: y, normal: z })
}

/** The rigid motion that takes one placement to another. */
export function movedTo(from: Placement, to: Placement): (placement: Placement) => Placement {
  const axes = [from.right, from.up, from.normal]
  const ends = [to.right, to.up, to.normal]
  const row = (k: 0 | 1 | 2): Vector =>
    axes.reduce<Vector>((all, axis, i) => sum(all, axis, ends[i]?.[k] ?? 0), [0, 0, 0])
  const rows: Turn = [row(0), row(1), row(2)]
  return ({ origin, right, up, normal }) => ({
    origin: sum(turned(rows, sum(origin, from.origin, -1)), to.origin),
    right: turned(rows, right),
    up: turned(rows, up),
    normal: turned(rows, normal),
  })
}

/** Sees the card with the face of the shown plate towards the viewer, and its y up. */
export const facing = (shown: Placement): ((placement: Placement) => Placement) =>
  viewOf(shown, { rests: 'upright', turn: 0 })

/** The smallest upright box round the plates. */
export function boxRound(assembly: Assembly, placements: readonly Placement[]): readonly [Vector, Vector] {
  return boxAround(assembly.plates.flatMap((_, i) => cornersOf(assembly, i, placements[i])))
}

/** The smallest upright box round points: its least and its greatest corner. */
export function boxAround(points: readonly Vector[]): readonly [Vector, Vector] {
  const ends = (pick: (...all: number[]) => number): Vector => [
    pick(...points.map(([x]) => x)),
    pick(...points.map(([, y]) => y)),
    pick(...points.map(([, , z]) => z)),
  ]
  return [ends(Math.min), ends(Math.max)]
}

/** The corners of one plate of the assembly. */
export const cornersOf = (assembly: Assembly, plate: number, at: Placement | undefined): Vector[] =>
  loopsOf(assembly, plate, at)[0] ?? []

/** The outline of one plate of the assembly, and its windows. */
export function loopsOf({ model, plates }: Assembly, plate: number, at: Placement | undefined): Vector[][] {
  const rings = model.plates[plates[plate]?.index ?? -1]?.rings ?? []
  const perMm = Number(model.perMm)
  return at ? rings.map((ring) => ring.map(([x, y]) => spotAt(at, x / perMm, y / perMm))) : []
}

export const moved = (placement: Placement, by: Vector): Placement => ({
  ...placement,
  origin: sum(placement.origin, by),
})
