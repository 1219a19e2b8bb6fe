import { covers } from '../../fold/assembly.ts'
import type { Vector } from '../../fold/pose.ts'
import { type Box, boxAround } from '../box.ts'
import { type Camera, project } from '../camera.ts'
import { type Face, over } from '../face/face.ts'
import type { Spot } from '../num.ts'
import { dot, mix3 } from '../space.ts'

/** A face that hides what is behind it, as it is seen. */
interface Screen {
  readonly face: Face
  readonly box: Box
  readonly outline: readonly Spot[]
  readonly holes: readonly (readonly Spot[])[]
}

/** In mm: what is nearer to a face than this lies on it. */
const touching = 0.4

/** Faces that hide; film does not. */
export function screensOf(faces: readonly Face[], camera: Camera, isFilm: (face: Face) => boolean): Screen[] {
  return faces.flatMap((face): Screen[] => {
    if (isFilm(face) || Math.abs(dot(face.place.normal, camera.eye)) < 1e-3) return []
    const seen = (loop: Face['outline']): Spot[] => loop.map(({ at }) => project(camera, at, 1))
    const outline = seen(face.outline)
    return [{ face, box: boxAround(outline), outline, holes: face.holes.map(seen) }]
  })
}

/** Whether nothing is in front of a point. */
export function isSeen(point: Vector, screens: readonly Screen[], camera: Camera): boolean {
  const [x, y] = project(camera, point, 1)
  return !screens.some(({ face, box, outline, holes }) => {
    if (x < box.left || x > box.right || y < box.top || y > box.bottom) return false
    // How far one must go from the point towards the eye to meet the face.
    const ahead = -over(face, point) / dot(face.place.normal, camera.eye)
    return ahead > touching && covers([outline], x, y) && !holes.some((hole) => covers([hole], x, y))
  })
}

/** The parts of a straight line that are seen, to 1/100 mm of the card. */
export function seenParts(
  [a, b]: readonly [Vector, Vector],
  screens: readonly Screen[],
  camera: Camera,
): (readonly [Vector, Vector])[] {
  const at = (share: number): Vector => mix3(a, b, share)
  const seen = (share: number): boolean => isSeen(at(share), screens, camera)
  const steps = 48
  const marks = Array.from({ length: steps }, (_, i) => (i + 0.5) / steps)
  const states = marks.map(seen)
  const parts: (readonly [Vector, Vector])[] = []
  let from: number | undefined = states[0] ? 0 : undefined
  for (const [i, state] of states.entries()) {
    const before = states[i - 1]
    if (before === undefined || before === state) continue
    const turn = between(marks[i - 1] ?? 0, marks[i] ?? 1, (share) => seen(share) === before)
    if (state) from = turn
    else if (from !== undefined) {
      parts.push([at(from), at(turn)])
      from = undefined
    }
  }
  if (from !== undefined) parts.push([at(from), b])
  return parts
}

/** Where something ends that holds at the start. */
function between(start: number, end: number, holds: (share: number) => boolean): number {
  let [low, high] = [start, end]
  for (let i = 0; i < 10; i++) {
    const half = (low + high) / 2
    if (holds(half)) low = half
    else high = half
  }
  return (low + high) / 2
}

/** Points spread evenly over a face, its windows left out. */
export function pointsOn(face: Face, perSide: number): Vector[] {
  const { origin, right, up } = face.place
  const flat = (at: Vector): Spot => {
    const d: Vector = [at[0] - origin[0], at[1] - origin[1], at[2] - origin[2]]
    return [dot(d, right), dot(d, up)]
  }
  const outline = face.outline.map(({ at }) => flat(at))
  const holes = face.holes.map((hole) => hole.map(({ at }) => flat(at)))
  const { left, right: end, top, bottom } = boxAround(outline)
  const grid = Array.from({ length: perSide }, (_, i) => (i + 0.5) / perSide)
  return grid.flatMap((u) =>
    grid.flatMap((v): Vector[] => {
      const [x, y] = [left + (end - left) * u, top + (bottom - top) * v]
      if (!covers([outline], x, y) || holes.some((hole) => covers([hole], x, y))) return []
      return [
        [
          origin[0] + right[0] * x + up[0] * y,
          origin[1] + right[1] * x + up[1] * y,
          origin[2] + right[2] * x + up[2] * y,
        ],
      ]
    }),
  )
}
