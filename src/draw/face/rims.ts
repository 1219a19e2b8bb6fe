import { s } from 'hastscript'
import { boxAround } from '../box.ts'
import { type Camera, project } from '../camera.ts'
import { laidOver } from '../colour.ts'
import { weights } from '../ink.ts'
import { area, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { toMm } from '../plane.ts'
import { dot, less } from '../space.ts'
import type { Corner, Face } from './face.ts'

/** How a sheet is drawn whose cut edges show how thick it is. */
interface Rim {
  readonly camera: Camera
  readonly scale: number
  /** What its face is painted with. */
  readonly tint: string
  readonly film: boolean
  /** Of the line along its edge, in mm. */
  readonly width: number
  readonly colour: string
}

/**
 * The cut edges of a sheet that look towards the reader, drawn double: a strip lighter than the face, and a thin line
 * between the two. The strip is as wide as the sheet is thick, seen from where the reader is, but so wide that it can be
 * seen. It lies within the outline, so that nothing else of the drawing is moved by it, and is worked out when it is
 * drawn. A crease has none.
 *
 * @param isOpen whether a sheet ends at an edge for the eye. It does not where another of the same piece goes on in the
 * same plane, nor where another sheet lies on it so near to the edge, in mm of the sheet, that the two look double anyway.
 */
export function rimMarks(face: Face, isOpen: IsOpen, rim: Rim): Mark[] {
  const loops = [face.outline, ...face.holes]
  const isSeen = loops.some((loop, n) =>
    loop.some(
      (corner, i) =>
        corner.edge === 'cut' &&
        showing(face, corner, loop[(i + 1) % loop.length] ?? corner, n > 0, rim.camera) > least,
    ),
  )
  if (!isSeen) return []
  const draw = (): Mark[] => {
    const strips = loops.flatMap((loop, n) => stripsAlong(face, loop, n > 0, isOpen, rim))
    if (strips.length === 0) return []
    const stroke = { width: weights.dimension, colour: rim.colour, cap: 'round' } as const
    return [
      area(
        strips.map(({ outer, inner }) => [...outer, ...inner]),
        { class: 'rim', fill: laidOver(rim.tint, '#ffffff', 0.65) },
      ),
      area(
        strips.map(({ inner }) => inner),
        { class: 'rim-line', stroke },
      ),
    ]
  }
  return [
    {
      node: () => s('g', { class: 'rims' }, ...draw().map((mark) => mark.node())),
      box: boxAround(face.outline.map(({ at }) => project(rim.camera, at, rim.scale))),
    },
  ]
}

/** Its outer edge on one way, and its inner edge back. */
interface Strip {
  readonly outer: readonly [Spot, Spot]
  readonly inner: readonly [Spot, Spot]
}

type IsOpen = (from: Corner, to: Corner, near: number) => boolean

interface Side {
  readonly a: Spot
  readonly b: Spot
  /** Along it and across it towards the sheet, of length 1. */
  readonly along: Spot
  readonly inwards: Spot
  /** Of the strip; 0 for an edge without. */
  readonly wide: number
}

function stripsAlong(
  face: Face,
  loop: readonly Corner[],
  isHole: boolean,
  isOpen: IsOpen,
  rim: Rim,
): Strip[] {
  const spots = loop.map(({ at }) => project(rim.camera, at, rim.scale))
  const around = spots.reduce((sum, [x, y], i) => {
    const [p, q] = spots[(i + 1) % spots.length] ?? [x, y]
    return sum + x * q - p * y
  }, 0)
  if (Math.abs(around) < 1e-6) return []
  const way = around > 0 === isHole ? -1 : 1
  const sides = loop.map((corner, i): Side => {
    const [a, b] = [spots[i] as Spot, spots[(i + 1) % spots.length] as Spot]
    const next = loop[(i + 1) % loop.length] ?? corner
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1
    const along: Spot = [(b[0] - a[0]) / long, (b[1] - a[1]) / long]
    const inwards: Spot = [-along[1] * way, along[0] * way]
    const shown = corner.edge === 'cut' ? showing(face, corner, next, isHole, rim.camera) : 0
    const strip = stripOf(face, shown, rim) + rim.width / 2
    const wide = shown > least && isOpen(corner, next, (strip + clear) / rim.scale) ? strip : 0
    const deep = isHole
      ? Number.POSITIVE_INFINITY
      : Math.max(...spots.map((p) => (p[0] - a[0]) * inwards[0] + (p[1] - a[1]) * inwards[1]))
    return {
      a,
      b,
      along,
      inwards,
      wide: deep > 4 * wide && long > 3 * wide ? wide : 0,
    }
  })
  return sides.flatMap((side, i): Strip[] => {
    if (side.wide === 0) return []
    const start = end(side, sides.at(i - 1) as Side, side.a, 'start')
    const stop = end(side, sides[(i + 1) % sides.length] as Side, side.b, 'end')
    const left = (stop[0] - start[0]) * side.along[0] + (stop[1] - start[1]) * side.along[1]
    return left < side.wide ? [] : [{ outer: [side.a, side.b], inner: [stop, start] }]
  })
}

/** Paper that shows between a strip and what lies beside it, at least, in mm of the drawing. */
const clear = 0.5

/** Cosine of the angle between the way an edge looks and the way to the eye, from which it is worth showing. */
const least = 0.12

/** How much an edge looks towards the reader: the cosine of the angle between the way it looks and the way to the eye. */
function showing({ place }: Face, from: Corner, to: Corner, isHole: boolean, { eye }: Camera): number {
  const edge = less(to.at, from.at)
  const long = Math.hypot(...edge) || 1
  const [x, y] = [dot(edge, place.right) / long, dot(edge, place.up) / long]
  // An outline runs counter-clockwise, so that the outside is on its right; a window is cut out the other way.
  const out = dot(place.right, eye) * y - dot(place.up, eye) * x
  return isHole ? -out : out
}

/** The strip of an edge in mm of the drawing: as thick as it is, and at least so wide that it can be seen. */
function stripOf({ piece: { stock } }: Face, shown: number, { scale, film }: Rim): number {
  const caliper = toMm(stock.caliper)
  const seen = Math.min(0.6, Math.max(0.3, 0.35 * Math.sqrt(caliper / usualPaper)))
  return Math.max(caliper * scale * shown, film ? 0.25 : seen)
}

/** Thickness of a sheet of plain drawing paper in mm: it has a strip of 0.35 mm. */
const usualPaper = 0.2

/**
 * Where the inner line of an edge begins or ends: at the inner line of its neighbour, or at the neighbour itself; straight
 * across from the corner where the outline turns inwards.
 */
function end(side: Side, neighbour: Side, corner: Spot, at: 'start' | 'end'): Spot {
  const { along, inwards, wide } = side
  const square: Spot = [corner[0] + inwards[0] * wide, corner[1] + inwards[1] * wide]
  const cross = along[0] * neighbour.along[1] - along[1] * neighbour.along[0]
  const ahead = at === 'end' ? 1 : -1
  const inside = along[0] * neighbour.inwards[0] + along[1] * neighbour.inwards[1]
  const turnsIn = inside * ahead > 0
  if (Math.abs(cross) < 0.15 || (turnsIn && neighbour.wide === 0)) return square
  const across = (p: Spot): number => p[0] * neighbour.inwards[0] + p[1] * neighbour.inwards[1]
  const t = (across(corner) + neighbour.wide - across(square)) / inside
  return t * ahead > 7 * wide ? square : [square[0] + along[0] * t, square[1] + along[1] * t]
}
