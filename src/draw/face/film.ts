import { boxAround } from '../box.ts'
import { type Camera, project } from '../camera.ts'
import { lineInside } from '../clip.ts'
import { glintLines, glintStroke } from '../film.ts'
import { line, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { type Flat, flatLoop } from '../plane.ts'
import { inSpace } from '../space.ts'
import type { Face } from './face.ts'

/**
 * The glints of a film on a face of it: near the upper left corner of the largest plate of the piece, and only where this
 * face is.
 *
 * @param loops the outline and the windows of the face on the paper.
 */
export function faceGlints(
  face: Face,
  faces: readonly Face[],
  loops: readonly (readonly Spot[])[],
  { camera, scale }: { readonly camera: Camera; readonly scale: number },
): Mark[] {
  const plates = faces
    .filter((other) => other.piece === face.piece)
    .map((other) => flatLoop(other.plate.outline))
  const own = flatLoop(face.plate.outline)
  if (plates.some((other) => areaOf(other) > areaOf(own) + 1e-6)) return []
  return filmLines(own, scale)
    .map((ends) => ends.map((p) => project(camera, inSpace(face.place, p), scale)) as [Spot, Spot])
    .flatMap((ends) => lineInside(ends, loops))
    .map(([a, b]) => line(a, b, glintStroke))
}

/** Where the glints are on a plate of this outline, in mm of the sheet, y upwards. */
export function filmLines(outline: readonly Flat[], scale: number): [Flat, Flat][] {
  // `top` is the lesser y.
  const { left, right, top, bottom } = boxAround(outline)
  return glintLines(right - left, bottom - top, scale).map(
    (ends) => ends.map(([x, y]): Flat => [left + x, top + y]) as [Flat, Flat],
  )
}

/** The area inside a loop, in square mm. */
export const areaOf = (loop: readonly Flat[]): number =>
  Math.abs(
    loop.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = loop[(i + 1) % loop.length] ?? [x, y]
      return sum + (x * nextY - nextX * y) / 2
    }, 0),
  )
