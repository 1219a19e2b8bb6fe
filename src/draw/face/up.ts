import { s } from 'hastscript'
import type { Card } from '../../card/card.ts'
import { boxAround } from '../box.ts'
import { project } from '../camera.ts'
import { colours } from '../ink.ts'
import { letteringOn } from '../letters.ts'
import { area, line, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { type Flat, flatLoop } from '../plane.ts'
import { dot, inSpace } from '../space.ts'
import type { Face } from './face.ts'
import type { View } from './marks.ts'

/** The arrow in mm of the drawing: as high as this, and clear paper round it. */
const [high, half, clear] = [5, 0.55, 0.8] as const

/**
 * The mark of a pattern with a top, on every sheet of which the face is seen: an arrow that lies on it and points the way
 * the pattern does. It stands where nothing hides it, low on the left if it can, which is looked for when it is drawn.
 *
 * @param faces in the order in which they are painted.
 * @param tintOf what a face is painted with.
 */
export function upMarks(
  faces: readonly Face[],
  card: Card,
  view: View,
  tintOf: (face: Face) => string,
): Map<Face, Mark> {
  const { camera, scale } = view
  const seen = ({ place }: Face): number => dot(place.normal, camera.eye)
  const wanted = faces.filter(
    (face, i) =>
      face.piece.stock.direction === 'upright' &&
      seen(face) > 0.05 &&
      !faces.slice(i + 1).some(({ plate }) => plate === face.plate) &&
      letteringOn(card, face.piece.name).length === 0,
  )
  let feetFound: Map<Face, Flat> | undefined
  const footOf = (face: Face): Flat | undefined => {
    feetFound ??= new Map(
      wanted.flatMap((one): [Face, Flat][] => {
        const foot = footOn(one, faces, view)
        return foot ? [[one, foot]] : []
      }),
    )
    // Of a folded piece the panels that are seen well are enough.
    const isBetter = (other: Face): boolean => other.piece === face.piece && seen(other) > aslant
    return seen(face) <= aslant && [...feetFound.keys()].some(isBetter) ? undefined : feetFound.get(face)
  }
  return new Map(
    wanted.map((face): [Face, Mark] => [
      face,
      {
        node: () => {
          const foot = footOf(face)
          const marks = foot ? arrowAt(foot, view, placeOn(face, view), tintOf(face)) : []
          return s('g', { class: 'upright' }, ...marks.map((mark) => mark.node()))
        },
        box: boxAround(face.outline.map(({ at }) => project(camera, at, scale))),
      },
    ]),
  )
}

const placeOn =
  ({ place }: Face, { camera, scale }: View) =>
  (p: Flat): Spot =>
    project(camera, inSpace(place, p), scale)

/** The first place for the foot of an arrow at which all of it is seen. */
function footOn(face: Face, faces: readonly Face[], view: View): Flat | undefined {
  const { camera, scale, palette } = view
  const place = placeOn(face, view)
  const later = faces.slice(faces.indexOf(face) + 1)
  const loopsOf = (all: readonly Face[]) =>
    all.map(({ outline, holes }) =>
      [outline, ...holes].map((loop) => loop.map(({ at }) => project(camera, at, scale))),
    )
  const shapes = loopsOf(faces.filter(({ plate }) => plate === face.plate))
  const freeOf = (covers: readonly (readonly Spot[])[][]) => (foot: Flat) =>
    roundArrow(foot, scale).every((p) => {
      const spot = place(p)
      return shapes.some((loops) => isIn(loops, spot)) && !covers.some((loops) => isIn(loops, spot))
    })
  const all = feet(face, scale)
  // Behind film it is seen too, only paler.
  const paper = later.filter(({ piece }) => !palette(piece.stock).film)
  return all.find(freeOf(loopsOf(later))) ?? all.find(freeOf(loopsOf(paper)))
}

/** Cosine of the angle from which a sheet is seen too much from its edge for an arrow on it to be read well. */
const aslant = 0.3

/** Where the foot of the arrow may be, on the flat sheet: from the lower left on. */
function feet({ plate }: Face, scale: number): Flat[] {
  const corners = flatLoop(plate.outline)
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)]
  const [left, low] = [Math.min(...xs), Math.min(...ys)]
  const [wide, tall] = [Math.max(...xs) - left, Math.max(...ys) - low]
  const edge = (half + clear + 1) / scale
  const room = Math.max(0, wide - 2 * edge)
  const rise = Math.max(0, tall - (high + 2 * clear + 1.5) / scale)
  const steps = [0, 0.2, 0.4, 0.6, 0.8, 1]
  return steps.flatMap((v) =>
    steps.map((u): Flat => [left + edge + room * u, low + (clear + 0.8) / scale + rise * v]),
  )
}

/** Spots round the arrow that must be seen. */
const roundArrow = ([x, y]: Flat, scale: number): Flat[] =>
  [-1, 0, 1].flatMap((side) =>
    [-clear, high * 0.33, high * 0.67, high + clear].map(
      (up): Flat => [x + (side * (half + clear)) / scale, y + up / scale],
    ),
  )

function arrowAt([x, y]: Flat, { scale }: View, place: (p: Flat) => Spot, tint: string): Mark[] {
  const at = (right: number, up: number): Spot => place([x + right / scale, y + up / scale])
  const head = [at(0, high), at(-half, high - 2), at(half, high - 2)]
  const [side, foot, top] = [half + clear * 0.6, -clear * 0.6, high + clear * 0.6]
  const ground = [at(-side, foot), at(side, foot), at(side, top), at(-side, top)]
  return [
    area([ground], { class: 'ground', fill: tint }),
    line(at(0, 0), at(0, high - 1.5), { class: 'up', width: 0.35, colour: colours.slate }),
    area([head], { class: 'up-head', fill: colours.slate }),
  ]
}

/** Whether a spot lies in an odd number of the loops. */
const isIn = (loops: readonly (readonly Spot[])[], [x, y]: Spot): boolean =>
  loops.reduce(
    (sum, loop) =>
      sum +
      loop.filter(([x1, y1], i) => {
        const [x2, y2] = loop[(i + 1) % loop.length] ?? [x1, y1]
        return y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)
      }).length,
    0,
  ) %
    2 ===
  1
