import type { Bond, Plate, Point, Segment, Structure } from '../../src/card/structure.ts'
import type { Placement, Pose, Vector } from '../../src/fold/pose.ts'
import { toMm } from '../../src/length/length.ts'

/**
 * Checks a pose against the structure and nothing else: each plate keeps its shape, each crease is one line in space
 * and bends the way it is scored, and what is stuck together lies face on face, where the bond says.
 */
export interface Tolerance {
  /** Between points that should be one, in mm. */
  readonly gap: number
  /** How far layers may lie off the plane of their panel because sheets have a thickness, in mm. */
  readonly thickness: number
}

type XY = readonly [number, number]
const xy = ({ x, y }: Point): XY => [toMm(x), toMm(y)]
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const less = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const size = (a: Vector): number => Math.hypot(...a)
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]

/** Where a point of the flat piece is in space. */
export const inSpace = ({ origin, right, up }: Placement, [x, y]: XY): Vector => [
  origin[0] + x * right[0] + y * up[0],
  origin[1] + x * right[1] + y * up[1],
  origin[2] + x * right[2] + y * up[2],
]

export function troublesIn(structure: Structure, pose: Pose, tolerance: Tolerance): string[] {
  const troubles: string[] = []
  for (const [name, placement] of pose)
    if (!keepsShape(placement)) troubles.push(`${name} is bent or stretched`)
  for (const { between, line, fold } of structure.hinges) {
    const [p, q] = between.map((name) => pose.get(name))
    if (!p || !q) continue
    const slack = tolerance.gap + tolerance.thickness
    const apart = [line.from, line.to].map((end) => size(less(inSpace(p, xy(end)), inSpace(q, xy(end)))))
    if (Math.max(...apart) > slack)
      troubles.push(`${between.join(' and ')} are ${Math.max(...apart)} mm apart`)
    const inner = innerPoint(plateOf(structure, between[1]), line)
    const above = dot(less(inSpace(q, inner), inSpace(q, xy(line.from))), p.normal)
    if ((fold === 'valley' ? above : -above) < -slack)
      troubles.push(`${between.join(' and ')} bend the wrong way`)
  }
  for (const bond of structure.bonds) {
    const [plate, onto] = [pose.get(bond.plate), pose.get(bond.onto)]
    if (plate && onto && !isFaceOnFace(structure, bond, plate, onto, tolerance))
      troubles.push(`${bond.plate} does not lie on ${bond.onto}`)
  }
  for (const name of structure.plates.map((plate) => plate.name))
    if (joined(structure).has(name) && !pose.has(name)) troubles.push(`${name} is nowhere`)
  return troubles
}

function keepsShape({ right, up, normal }: Placement): boolean {
  const units = [right, up, normal].every((axis) => Math.abs(size(axis) - 1) < 1e-9)
  return units && Math.abs(dot(right, up)) < 1e-9 && size(less(cross(right, up), normal)) < 1e-9
}

/** The bond's map carries corners of the plate to points of the other; in space they differ along the normal only. */
function isFaceOnFace(
  structure: Structure,
  bond: Bond,
  plate: Placement,
  onto: Placement,
  { gap, thickness }: Tolerance,
): boolean {
  const angle = (bond.turn * Math.PI) / 180
  const off = plateOf(structure, bond.plate).outline.map((corner) => {
    const [x, y] = xy(corner)
    const flipped = bond.over ? -x : x
    const [ax, ay] = xy(bond.at)
    const there: XY = [
      ax + flipped * Math.cos(angle) - y * Math.sin(angle),
      ay + flipped * Math.sin(angle) + y * Math.cos(angle),
    ]
    return less(inSpace(plate, [x, y]), inSpace(onto, there))
  })
  const outwards = bond.side === 'face' ? 1 : -1
  return (
    Math.abs(dot(plate.normal, onto.normal) - (bond.over ? -1 : 1)) < 1e-9 &&
    off.every((way) => size(cross(way, onto.normal)) < gap) &&
    off.every((way) => outwards * dot(way, onto.normal) > -gap && size(way) < gap + thickness)
  )
}

/** Of the corners on that side of the line on which the plate lies beside it, the one that is farthest from it. */
function innerPoint({ outline }: Plate, { from, to }: Segment): XY {
  const [[x0, y0], [x1, y1]] = [xy(from), xy(to)]
  const corners = outline.map(xy)
  const length = Math.hypot(x1 - x0, y1 - y0)
  const [across, up] = [(y0 - y1) / length, (x1 - x0) / length]
  const beside: XY = [(x0 + x1) / 2 + across * hair, (y0 + y1) / 2 + up * hair]
  const side = isInside(beside, corners) ? 1 : -1
  const distance = ([x, y]: XY) => side * ((x - x0) * across + (y - y0) * up)
  return corners.reduce((far, point) => (distance(point) > distance(far) ? point : far), [x0, y0] as XY)
}

/** A distance that no plate is as narrow as, in mm. */
const hair = 1e-3

/** Whether a point is inside a polygon, by counting the edges to its right. */
export function isInside([x, y]: XY, corners: readonly XY[]): boolean {
  let inside = false
  for (const [i, [x1, y1]] of corners.entries()) {
    const [x0, y0] = corners.at(i - 1) ?? [x1, y1]
    if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) inside = !inside
  }
  return inside
}

export const plateOf = ({ plates }: Structure, name: string): Plate => {
  const plate = plates.find((p) => p.name === name)
  if (!plate) throw new Error(`no plate ${name}`)
  return plate
}

/** The plates that hang together with the one that stays put. */
export function joined({ hinges, bonds, display }: Structure): ReadonlySet<string> {
  const found = new Set([display.plate])
  const pairs = [...hinges.map((h) => h.between), ...bonds.map((b) => [b.plate, b.onto] as const)]
  for (let before = 0; before < found.size; ) {
    before = found.size
    for (const [a, b] of pairs) if (found.has(a) || found.has(b)) found.add(a).add(b)
  }
  return found
}
