import type { Vector } from '../fold/pose.ts'
import { sum } from '../fold/space.ts'
import type { Part } from './apart-parts.ts'
import type { Scene } from './apart-scene.ts'
import { isSeen, pointsOn, screensOf } from './apart-seen.ts'
import { boxAround } from './box.ts'
import { project } from './camera.ts'
import type { Face } from './face.ts'

/** How far each part is lifted when a step is so many mm. */
export function offsetsAt({ lifts }: Pick<Scene, 'lifts'>, step: number): (part: Part | undefined) => Vector {
  const offset = (part: Part | undefined): Vector => {
    const lift = part && lifts.get(part)
    return lift ? sum(offset(lift.with), lift.way, lift.steps * step) : [0, 0, 0]
  }
  return offset
}

export function lifted(face: Face, by: Vector): Face {
  const moved = (loop: Face['outline']): Face['outline'] =>
    loop.map(({ at, edge }) => ({ at: sum(at, by), edge }))
  return {
    ...face,
    place: { ...face.place, origin: sum(face.place.origin, by) },
    outline: moved(face.outline),
    holes: face.holes.map(moved),
  }
}

/** No sheet may hide more of another than this share, if that can be had. */
const mostHidden = 0.22
/** Steps that are tried, in shares of the longer side of the picture. */
const shares = Array.from({ length: 14 }, (_, i) => 0.16 + i * 0.05)

/** The smallest even step at which no part hides more than a little of another. */
export function stepOf(scene: Scene, faces: readonly Face[], isFilm: (face: Face) => boolean): number {
  const { camera, parts } = scene
  const box = boxAround(faces.flatMap(({ outline }) => outline.map(({ at }) => project(camera, at, 1))))
  const long = Math.max(box.right - box.left, box.bottom - box.top)
  const points = faces.map((face) => ({ part: parts.partOf(face.plate.name), points: pointsOn(face, 6) }))
  const worst = (step: number): number => {
    const offset = offsetsAt(scene, step)
    const screens = screensOf(
      faces.map((face) => lifted(face, offset(parts.partOf(face.plate.name)))),
      camera,
      isFilm,
    )
    const hidden = parts.all.map((part) => {
      const others = screens.filter(({ face }) => parts.partOf(face.plate.name) !== part)
      const own = points.filter((one) => one.part === part).flatMap((one) => one.points)
      const by = offset(part)
      return own.filter((point) => !isSeen(sum(point, by), others, camera)).length / Math.max(1, own.length)
    })
    return Math.max(0, ...hidden)
  }
  let best = { step: long * 0.5, hidden: Number.POSITIVE_INFINITY }
  for (const share of shares) {
    const hidden = worst(long * share)
    if (hidden <= mostHidden) return long * share
    if (hidden < best.hidden - 0.02) best = { step: long * share, hidden }
  }
  return best.step
}
