import { type Affine, after, apply, determinant, identity } from './affine.ts'
import type { Assembly, Link } from './assembly.ts'
import type { Closing } from './closings.ts'
import { mmOf } from './joints.ts'
import { type Shape, type Slice, slicesOf } from './slices.ts'

/** The card laid flat by one closing. */
export interface Layout {
  readonly assembly: Assembly
  readonly closing: Closing
  /** What each plate covers. */
  readonly shapes: readonly Shape[]
  /** Whether the face of each plate looks at the viewer. */
  readonly faceUp: readonly boolean[]
  readonly creases: readonly LaidCrease[]
  readonly slices: readonly Slice[]
  /** Plates that lie on each other somewhere, without sets that are part of a larger one. */
  readonly groups: readonly (readonly number[])[]
}

/** A crease of the shut card, as slices cut it. */
export interface LaidCrease {
  readonly link: Link
  readonly folded: boolean
  readonly from: number
  readonly to: number
  /** Where it is at this v, between `from` and `to`. */
  readonly at: (v: number) => number
}

/** Slices are cut level, so that no crease may be: a card with slanting creases is tilted by an angle that none has. */
const tilt = 0.6180339887

/** Lays every plate where a closing puts its body. */
export function layOut(assembly: Assembly, closing: Closing): Layout {
  const { plates, links, hems } = assembly
  const { place, folded } = closing
  const faceUp = plates.map(({ body, over }) => determinant(place[body] ?? identity) > 0 !== over)
  const placed = [
    ...links.map((link, i) => ({ link, folded: folded[i] ?? false })),
    ...hems.map((link) => ({ link, folded: true })),
  ]
  const isUpright = placed.every(({ link: { a, lineA } }) => {
    const [from, to] = lineA.map((point) => apply(place[a] ?? identity, point)[0])
    return from === to
  })
  const view = isUpright ? identity : tilted(mmOf(assembly))
  const seen = place.map((map) => after(view, map))
  const shapes = plates.map(({ body, rings }) =>
    rings.map((ring) => ring.map((point) => apply(seen[body] ?? identity, point))),
  )
  const creases = placed.map((one) => creaseOf(one, seen))
  const slices = slicesOf(
    shapes,
    creases.flatMap(({ from, to }) => [from, to]),
  )
  return { assembly, closing, shapes, faceUp, creases, slices, groups: groupsIn(slices) }
}

function creaseOf(
  { link, folded }: Pick<LaidCrease, 'link' | 'folded'>,
  seen: readonly Affine[],
): LaidCrease {
  const ends = link.lineA.map((point) => apply(seen[link.a] ?? identity, point))
  const [[u0, v0] = [0, 0], [u1, v1] = [0, 0]] = ends.sort((x, y) => x[1] - y[1])
  const at = (v: number): number => (u0 === u1 ? u0 : u0 + ((v - v0) / (v1 - v0)) * (u1 - u0))
  return { link, folded, from: v0, to: v1, at }
}

/** Sets of shapes that lie on each other, without sets that are part of a larger one. */
export function groupsIn(slices: readonly Slice[]): (readonly number[])[] {
  const sets = new Set(slices.flatMap(({ cells }) => cells.map(({ shapes }) => shapes)))
  const all = [...sets].sort((a, b) => b.length - a.length)
  const largest: (readonly number[])[] = []
  for (const one of all)
    if (!largest.some((other) => one.every((shape) => other.includes(shape)))) largest.push(one)
  return largest
}

/** Tilted, and in mm, since it is no longer in whole numbers of anything. */
function tilted(mm: number): Affine {
  const [cos, sin] = [mm * Math.cos(tilt), mm * Math.sin(tilt)]
  return { a: cos, b: -sin, c: sin, d: cos, e: 0, f: 0 }
}
