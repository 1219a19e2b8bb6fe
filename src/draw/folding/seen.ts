import { type Box, boxAround, boxOf } from '../box.ts'
import { type Camera, project } from '../camera.ts'
import type { Face } from '../face/face.ts'
import type { Spot } from '../num.ts'
import { dot } from '../space.ts'

/** Faces as they are painted one over the other, and what of them falls where; in mm of the card, y downwards. */
export interface Picture {
  readonly faces: readonly Face[]
  readonly loops: readonly (readonly Spot[])[][]
  readonly boxes: readonly Box[]
  readonly box: Box
  readonly camera: Camera
}

/** @param faces in the order in which they are painted. */
export function pictureOf(faces: readonly Face[], camera: Camera): Picture {
  const loops = faces.map((face) =>
    [face.outline, ...face.holes].map((loop) => loop.map(({ at }) => project(camera, at, 1))),
  )
  const boxes = loops.map(([outline = []]) => boxAround(outline))
  return { faces, loops, boxes, box: boxOf(boxes), camera }
}

/** Which face is seen at a spot, of those painted after `after`; -1 where there is none. */
export function seenAt({ loops, boxes }: Picture, [x, y]: Spot, after = -1): number {
  for (let i = loops.length - 1; i > after; i--) {
    const box = boxes[i]
    if (!box || x < box.left || x > box.right || y < box.top || y > box.bottom) continue
    if (isInside(loops[i] ?? [], x, y)) return i
  }
  return -1
}

/** Inside an odd number of loops: windows are open. */
function isInside(loops: readonly (readonly Spot[])[], x: number, y: number): boolean {
  let inside = false
  for (const loop of loops)
    for (const [i, [ax, ay]] of loop.entries()) {
      const [bx, by] = loop[(i + 1) % loop.length] as Spot
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside
    }
  return inside
}

/** The point of its piece that a face shows at a spot, and the side of it. */
function pointOf({ place }: Face, [x, y]: Spot, camera: Camera): readonly [number, number, number] {
  const [o, r, u] = [
    project(camera, place.origin, 1),
    project(camera, place.right, 1),
    project(camera, place.up, 1),
  ]
  const whole = r[0] * u[1] - r[1] * u[0]
  const [dx, dy] = [x - o[0], y - o[1]]
  return [
    (dx * u[1] - dy * u[0]) / whole,
    (r[0] * dy - r[1] * dx) / whole,
    Math.sign(dot(place.normal, camera.eye)),
  ]
}

/** Along the longer side of two pictures, so many spots are compared. */
const grid = 32

/** A point of a sheet that has moved by less than this share of the picture has not moved to speak of. */
const nearby = 0.04

/**
 * How much of two pictures differs, as a share of all that either covers: 0 when they are the same, 1 when nothing is
 * where it was. A spot differs when another plate is seen there, another side of it, or another part of it.
 */
export function changeBetween(a: Picture, b: Picture): number {
  const box = boxOf([a.box, b.box])
  const long = Math.max(box.right - box.left, box.bottom - box.top)
  const step = long / grid
  let [covered, changed] = [0, 0]
  for (let x = box.left + step / 2; x < box.right; x += step)
    for (let y = box.top + step / 2; y < box.bottom; y += step) {
      const [i, j] = [seenAt(a, [x, y]), seenAt(b, [x, y])]
      if (i < 0 && j < 0) continue
      covered++
      const [one, two] = [a.faces[i], b.faces[j]]
      if (!one || !two || one.plate.name !== two.plate.name) {
        changed++
        continue
      }
      const [p, q] = [pointOf(one, [x, y], a.camera), pointOf(two, [x, y], b.camera)]
      if (p[2] !== q[2] || Math.hypot(p[0] - q[0], p[1] - q[1]) > nearby * long) changed++
    }
  return covered === 0 ? 0 : changed / covered
}
