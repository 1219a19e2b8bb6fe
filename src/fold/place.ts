import type { Display } from '../card/structure.ts'
import { applyLinear } from './affine.ts'
import type { Bars } from './linkage.ts'
import { mmOf } from './pins.ts'
import type { Placement, Vector } from './pose.ts'
import type { Section } from './section.ts'

/** A turn in space: its rows. */
type Turn = readonly [Vector, Vector, Vector]

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const turned = (rows: Turn, v: Vector): Vector => [dot(rows[0], v), dot(rows[1], v), dot(rows[2], v)]
const sum = (a: Vector, b: Vector, k = 1): Vector => [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]]

/**
 * Where the plates are, in the frame of the section (u, v and out of the unturned plates), in mm.
 *
 * @param heights how far each plate lies in front of the middle of its body.
 */
export function placeInSection(section: Section, bars: Bars, heights: readonly number[]): Placement[] {
  const mm = mmOf(section)
  const length = 1 / Math.sqrt(section.norm)
  return section.plates.map(({ body, map, over }, i): Placement => {
    const [cos, sin] = [Math.cos(bars.turn[body] ?? 0), Math.sin(bars.turn[body] ?? 0)]
    const along = (u: number, v: number): Vector => [u * cos, v, u * sin]
    const axis = (x: number, y: number): Vector => {
      const [u, v] = applyLinear(map, [x, y])
      return along(u * length, v * length)
    }
    const out: Vector = [-sin, 0, cos]
    const start: Vector = [bars.x[body] ?? 0, 0, bars.y[body] ?? 0]
    return {
      origin: sum(sum(start, along(map.e * mm, map.f * mm)), out, heights[i] ?? 0),
      right: axis(1, 0),
      up: axis(0, 1),
      normal: over ? [sin, 0, -cos] : out,
    }
  })
}

/** Turns the card so that the shown plate lies on the table with its face up, or stands upright facing the viewer. */
export function viewOf(shown: Placement, { rests, turn }: Display): (placement: Placement) => Placement {
  const angle = (turn * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  // Where the shown plate's x, y and face go: before and after the turn about the vertical.
  const upright = rests === 'upright'
  const ends = ([[1, 0, 0], upright ? [0, 1, 0] : [0, 0, -1], upright ? [0, 0, 1] : [0, 1, 0]] as const).map(
    ([x, y, z]): Vector => [x * cos + z * sin, y, z * cos - x * sin],
  )
  const axes = [shown.right, shown.up, shown.normal]
  const row = (k: 0 | 1 | 2): Vector =>
    axes.reduce<Vector>((all, axis, i) => sum(all, axis, ends[i]?.[k] ?? 0), [0, 0, 0])
  const rows: Turn = [row(0), row(1), row(2)]
  return ({ origin, right, up, normal }) => ({
    origin: turned(rows, sum(origin, shown.origin, -1)),
    right: turned(rows, right),
    up: turned(rows, up),
    normal: turned(rows, normal),
  })
}

/** The smallest upright box round the plates. */
export function boxRound(section: Section, placements: readonly Placement[]): readonly [Vector, Vector] {
  const perMm = Number(section.model.perMm)
  const points = section.plates.flatMap(({ index }, i) => cornersOf(section, index, placements[i], perMm))
  const ends = (pick: (...all: number[]) => number): Vector => [
    pick(...points.map(([x]) => x)),
    pick(...points.map(([, y]) => y)),
    pick(...points.map(([, , z]) => z)),
  ]
  return [ends(Math.min), ends(Math.max)]
}

const cornersOf = ({ model }: Section, index: number, at: Placement | undefined, perMm: number): Vector[] =>
  at
    ? (model.plates[index]?.rings[0] ?? []).map(([x, y]) =>
        sum(sum(at.origin, at.right, x / perMm), at.up, y / perMm),
      )
    : []

export const moved = (placement: Placement, by: Vector): Placement => ({
  ...placement,
  origin: sum(placement.origin, by),
})
