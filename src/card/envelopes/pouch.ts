import { type Size, same, times, zero } from '../../length/length.ts'
import type { Bond, Hinge, Plate, Point, Polygon, Segment, Stock, Structure } from '../structure.ts'

/** A flap of an envelope: its edges beyond its crease, counter-clockwise about the front. */
export interface Flap {
  readonly name: string
  readonly beyond: readonly Point[]
}

export interface PouchInput {
  readonly stock: Stock
  readonly sheet: Size
  /** Of the front: bottom left, bottom right, top right, top left. */
  readonly corners: readonly [Point, Point, Point, Point]
  /** On the edges between them: bottom, right, top, left. */
  readonly flaps: readonly [Flap, Flap, Flap, Flap]
}

/**
 * An envelope: a front with four flaps, of which the left and the right one fold in first, the bottom one is stuck on
 * both, and the top one is left open. Inside up, so every crease is a valley.
 */
export function pouch({ stock, sheet, corners, flaps }: PouchInput): Structure {
  const [bottomLeft, bottomRight, topRight, topLeft] = corners
  const [bottom, right, top, left] = flaps
  // Of plates that could lie in either order the first one named lies in front: the top flap shuts over the others.
  const hung = [
    { flap: top, from: topRight, to: topLeft },
    { flap: bottom, from: bottomLeft, to: bottomRight },
    { flap: left, from: topLeft, to: bottomLeft },
    { flap: right, from: bottomRight, to: topRight },
  ]
  const plate = (name: string, outline: Polygon): Plate => ({ name, piece: 'envelope', outline, holes: [] })
  const cuts = hung.flatMap(({ flap, from, to }) => cutsAlong([from, ...flap.beyond, to], sheet))
  return {
    pieces: [{ name: 'envelope', kind: 'loose', stock, count: 1, size: sheet, cuts }],
    plates: [
      ...hung.map(({ flap, from, to }) => plate(flap.name, [to, from, ...flap.beyond])),
      plate('front', corners),
    ],
    hinges: hung.map(
      ({ flap, from, to }): Hinge => ({ between: ['front', flap.name], line: { from, to }, fold: 'valley' }),
    ),
    bonds: [seam(bottom, left, bottomLeft), seam(bottom, right, bottomRight)],
    stops: [],
    display: {
      angles: [{ hinge: ['front', top.name], degrees: 60 }],
      plate: 'front',
      rests: 'flat',
      turn: 0,
    },
  }
}

/**
 * The bottom flap stuck on a side flap. Their creases meet at a right angle, so folding over both is a half turn about
 * the corner where they meet: the bottom flap lies on the side flap's outside, the same way up.
 */
const seam = (bottom: Flap, side: Flap, { x, y }: Point): Bond => ({
  plate: bottom.name,
  onto: side.name,
  side: 'back',
  over: false,
  turn: 180,
  at: { x: times(x, 2), y: times(y, 2) },
  height: zero,
})

/** The edges of a flap that are not edges of the sheet. */
function cutsAlong(points: readonly Point[], { width, height }: Size): Segment[] {
  const onEdge = (from: Point, to: Point): boolean =>
    (same(from.x, to.x) && (same(from.x, zero) || same(from.x, width))) ||
    (same(from.y, to.y) && (same(from.y, zero) || same(from.y, height)))
  return points.slice(1).flatMap((to, i) => {
    const from = points[i]
    return from && !onEdge(from, to) ? [{ from, to }] : []
  })
}
