import type { Card } from '../card/card.ts'
import { type Camera, project } from './camera.ts'
import type { Corner, Face } from './face.ts'
import { faceLetters } from './face-letters.ts'
import { glints } from './film.ts'
import type { Slant } from './hatch.ts'
import { colours, weights } from './ink.ts'
import { area, line, type Mark } from './mark.ts'
import type { Spot } from './num.ts'
import { painted } from './painted.ts'
import { toMm } from './plane.ts'
import { dot, inSpace } from './space.ts'
import type { Palette } from './stock.ts'

export interface View {
  readonly camera: Camera
  readonly scale: number
  readonly palette: Palette
  /** The piece in the accent colour. */
  readonly of: string | undefined
}

/** Faces painted one over the other, in their order: tint and pattern, then edges, then letters. */
export function faceMarks(faces: readonly Face[], card: Card, view: View): Mark[] {
  return faces.flatMap((face, i) => {
    const last = !faces.slice(i + 1).some((other) => other.plate === face.plate)
    return [
      ...fillMarks(face, view),
      ...edgeMarks(face, faces, view),
      ...(last ? faceLetters(face, card, view) : []),
    ]
  })
}

const looksHere = (face: Face, { camera }: View): boolean => dot(face.place.normal, camera.eye) > 0
const onPaper = (loop: readonly Corner[], { camera, scale }: View): Spot[] =>
  loop.map((corner) => project(camera, corner.at, scale))

function fillMarks(face: Face, view: View): Mark[] {
  const { right, up } = face.place
  const [r, u] = [project(view.camera, right, 1), project(view.camera, up, 1)]
  const slant: Slant = [r[0], r[1], -u[0], -u[1]]
  const paint = view.palette(face.piece.stock, !looksHere(face, view), slant)
  const loops = [face.outline, ...face.holes].map((loop) => onPaper(loop, view))
  const { width, height } = face.piece.size
  const shine = paint.film
    ? glints(toMm(width), toMm(height), view.scale, (p) =>
        project(view.camera, inSpace(face.place, p), view.scale),
      )
    : []
  const dim = paint.film ? 0 : shade(face, view)
  return [
    ...painted(loops, paint, { class: 'face' }),
    ...(dim > 0.005 ? [area(loops, { class: 'shade', fill: colours.shade, opacity: dim })] : []),
    ...shine,
  ]
}

/** Where the light comes from: the front, above, a little from the right. */
const light = [0.35, 0.45, 0.82] as const

/** How much darker a face is for looking away from the light: nothing for one that looks to the front. */
function shade(face: Face, view: View): number {
  const lit = dot(face.place.normal, light) * (looksHere(face, view) ? 1 : -1)
  return Math.min(0.09, Math.max(0, (light[2] - lit) * 0.085))
}

function edgeMarks(face: Face, faces: readonly Face[], view: View): Mark[] {
  const base = face.piece.kind === 'base'
  const accent = face.piece.name === view.of
  const strokes = [face.outline, ...face.holes].flatMap((loop) => {
    const spots = onPaper(loop, view)
    return loop.flatMap(({ edge }, i): Mark[] => {
      const ends = [spots[i] as Spot, spots[(i + 1) % spots.length] as Spot] as const
      if (edge === 'split') return []
      const outer = edge === 'cut' || isSilhouette(face, ends, faces, view)
      const width = accent ? 0.7 : outer ? (base ? weights.edge : weights.layer) : weights.crease
      const colour = accent ? colours.rust : colours.ink
      return [line(...ends, { class: outer ? 'edge' : 'fold', width, colour, cap: 'round' })]
    })
  })
  return strokes
}

/** Whether the sheet turns away at a crease: both its panels lie to the same side of it on the paper. */
function isSilhouette(
  face: Face,
  [a, b]: readonly [Spot, Spot],
  faces: readonly Face[],
  view: View,
): boolean {
  const side = (spots: readonly Spot[]) =>
    Math.sign(
      spots.reduce((sum, p) => sum + (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]), 0),
    )
  const touches = (spots: readonly Spot[]) =>
    [a, b].every((end) => spots.some((p) => Math.hypot(p[0] - end[0], p[1] - end[1]) < 0.05))
  const other = faces.find(
    (f) => f.plate !== face.plate && f.piece === face.piece && touches(onPaper(f.outline, view)),
  )
  return other === undefined || side(onPaper(other.outline, view)) === side(onPaper(face.outline, view))
}
