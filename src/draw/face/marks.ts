import type { Card } from '../../card/card.ts'
import { type Camera, project } from '../camera.ts'
import { laidOver } from '../colour.ts'
import type { Slant } from '../hatch.ts'
import { colours, weights } from '../ink.ts'
import { line, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { painted } from '../painted.ts'
import { dot } from '../space.ts'
import type { Paint, Palette } from '../stock.ts'
import { edgesOf, type FaceEdge } from './edges.ts'
import type { Corner, Face } from './face.ts'
import { faceGlints } from './film.ts'
import { faceLetters } from './letters.ts'
import { inOnePlane, liesBeside, liesOn, runsAlong } from './planes.ts'
import { rimMarks } from './rims.ts'
import { upMarks } from './up.ts'

export interface View {
  readonly camera: Camera
  readonly scale: number
  readonly palette: Palette
  /** The piece in the accent colour. */
  readonly of: string | undefined
}

/**
 * Faces painted one over the other, in their order: tint and pattern, the strips of cut edges that look towards the
 * reader, then edges, then letters.
 */
export function faceMarks(faces: readonly Face[], card: Card, view: View): Mark[] {
  const { edges, joined, lying } = preparedFor(faces, view.camera)
  const up = upMarks(faces, card, view, (face) => paintOf(face, view).tint)
  const isLast = faces.map(({ plate }, i) => faces.findLastIndex((other) => other.plate === plate) === i)
  return faces.flatMap((face, i) => {
    const last = isLast[i] ?? true
    const paint = paintOf(face, view)
    return [
      ...fillMarks(face, faces, paint, !last, view),
      ...rims(face, paint, { joined: joined[i] ?? [], lying: lying[i] ?? [] }, view),
      ...edgeMarks(face, edges[i] ?? [], view),
      ...(last ? faceLetters(face, card, view) : []),
      ...[up.get(face) ?? []].flat(),
    ]
  })
}

/** What is the same for a drawing of every scale. */
interface Prepared {
  readonly camera: Camera
  readonly edges: readonly (readonly FaceEdge[])[]
  /** For each face the faces of the same piece that lie in the same plane, as if they were one. */
  readonly joined: readonly (readonly Face[])[]
  /** For each face those that lie on it, on the side that is seen. */
  readonly lying: readonly (readonly Face[])[]
}

const prepared = new WeakMap<readonly Face[], Prepared>()

function preparedFor(faces: readonly Face[], camera: Camera): Prepared {
  const known = prepared.get(faces)
  if (known?.camera === camera) return known
  const found = {
    camera,
    edges: edgesOf(faces, camera),
    joined: faces.map((face) => faces.filter((other) => inOnePlane(face, other))),
    lying: faces.map((face, i) => faces.slice(i + 1).filter((other) => liesOn(other, face))),
  }
  prepared.set(faces, found)
  return found
}

const looksHere = (face: Face, { camera }: View): boolean => dot(face.place.normal, camera.eye) > 0
const onPaper = (loop: readonly Corner[], { camera, scale }: View): Spot[] =>
  loop.map((corner) => project(camera, corner.at, scale))

/** The paint of a face in its light: no shade is laid over it, so that it prints without see-through layers. */
function paintOf(face: Face, view: View): Paint {
  const { right, up } = face.place
  const [r, u] = [project(view.camera, right, 1), project(view.camera, up, 1)]
  const slant: Slant = [r[0], r[1], -u[0], -u[1]]
  const paint = view.palette(face.piece.stock, !looksHere(face, view), slant)
  const dim = paint.film ? 0 : shade(face, view)
  if (dim < 0.005) return paint
  const darker = (colour: string): string => laidOver(colour, colours.shade, dim)
  const { hatch } = paint
  return {
    ...paint,
    tint: darker(paint.tint),
    ...(hatch && { hatch: { ...hatch, colour: darker(hatch.colour) } }),
  }
}

/** @param isParted whether another part of the same sheet is painted later, beside this one. */
function fillMarks(face: Face, faces: readonly Face[], paint: Paint, isParted: boolean, view: View): Mark[] {
  const loops = [face.outline, ...face.holes].map((loop) => onPaper(loop, view))
  const shine = paint.film ? faceGlints(face, faces, loops, view) : []
  return [
    ...(isParted && !paint.film ? seams(face, paint, view) : []),
    ...painted(loops, paint, { class: 'face' }),
    ...shine,
  ]
}

/** A sheet that was split to be sorted is painted a hair beyond the split, under its other part: no gap shows there. */
const seams = (face: Face, { tint }: Paint, view: View): Mark[] => {
  const spots = onPaper(face.outline, view)
  return face.outline.flatMap(({ edge }, i) =>
    edge === 'split'
      ? [
          line(spots[i] as Spot, spots[(i + 1) % spots.length] as Spot, {
            class: 'seam',
            width: 0.2,
            colour: tint,
          }),
        ]
      : [],
  )
}

/** Where the light comes from: the front, above, a little from the right. */
const light = [0.35, 0.45, 0.82] as const

/** How much darker a face is for looking away from the light: nothing for one that looks to the front. */
function shade(face: Face, view: View): number {
  const lit = dot(face.place.normal, light) * (looksHere(face, view) ? 1 : -1)
  return Math.min(0.07, Math.max(0, (light[2] - lit) * 0.07))
}

/** The line along the edges of a face. A piece that is pointed out has it in the accent colour, and heavier. */
function penOf({ piece }: Face, { of }: View): { colour: string; edge: number; fold: number } {
  if (piece.name === of) return { colour: colours.rust, edge: 0.7, fold: 0.7 }
  return {
    colour: colours.ink,
    edge: piece.kind === 'base' ? weights.edge : weights.layer,
    fold: weights.crease,
  }
}

function edgeMarks(face: Face, edges: readonly FaceEdge[], view: View): Mark[] {
  const { colour, ...widths } = penOf(face, view)
  const { camera, scale } = view
  return edges.map(({ from, to, kind }) =>
    line(project(camera, from, scale), project(camera, to, scale), {
      class: kind,
      width: widths[kind],
      colour,
      cap: 'round',
    }),
  )
}

function rims(
  face: Face,
  { tint, film }: Paint,
  { joined, lying }: { joined: readonly Face[]; lying: readonly Face[] },
  view: View,
): Mark[] {
  const { colour, edge } = penOf(face, view)
  const isOpen = (from: Corner, to: Corner, near: number): boolean =>
    !joined.some(({ outline }) => runsAlong(outline, from.at, to.at)) &&
    !lying.some((other) => liesBeside(other, face, from.at, to.at, near))
  return rimMarks(face, isOpen, { camera: view.camera, scale: view.scale, tint, film, width: edge, colour })
}
