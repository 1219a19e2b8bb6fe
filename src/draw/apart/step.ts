import type { Vector } from '../../fold/pose.ts'
import { sum } from '../../fold/space.ts'
import { boxAround } from '../box.ts'
import { project } from '../camera.ts'
import type { Face } from '../face/face.ts'
import type { Part } from './parts.ts'
import type { Scene } from './scene.ts'
import { isSeen, pointsOn, screensOf } from './seen.ts'

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

/** No sheet may hide more of another than this share, if that can be had; in a high stack more, or all would be small. */
const mostHidden = { usual: 0.22, inStack: 0.36 } as const
/** A picture that is higher than this many times its width is a high stack. */
const high = 1.7
/** Steps that are tried, in shares of the longer side of the picture. */
const shares = Array.from({ length: 17 }, (_, i) => 0.16 + i * 0.04)

/** The smallest even step at which no part hides more than a little of another. */
export function stepOf(scene: Scene, faces: readonly Face[], isFilm: (face: Face) => boolean): number {
  const { camera, parts } = scene
  const { wide, tall } = measured(faces, scene)
  const long = Math.max(wide, tall)
  const points = faces.map((face) => ({ part: parts.partOf(face.plate.name), points: pointsOn(face, 6) }))
  const attempt = (step: number): { hidden: number; most: number } => {
    const offset = offsetsAt(scene, step)
    const moved = faces.map((face) => lifted(face, offset(parts.partOf(face.plate.name))))
    const screens = screensOf(moved, camera, isFilm)
    const hidden = parts.all.map((part) => {
      const others = screens.filter(({ face }) => parts.partOf(face.plate.name) !== part)
      const own = points.filter((one) => one.part === part).flatMap((one) => one.points)
      const by = offset(part)
      return own.filter((point) => !isSeen(sum(point, by), others, camera)).length / Math.max(1, own.length)
    })
    const now = measured(moved, scene)
    const most = now.tall > high * now.wide ? mostHidden.inStack : mostHidden.usual
    return { hidden: Math.max(0, ...hidden), most }
  }
  let best = { step: long * 0.5, hidden: Number.POSITIVE_INFINITY }
  for (const share of shares) {
    const { hidden, most } = attempt(long * share)
    if (hidden <= most) return long * share
    if (hidden < best.hidden - 0.02) best = { step: long * share, hidden }
  }
  return best.step
}

/** How wide and how tall faces are on the paper. */
function measured(faces: readonly Face[], { camera }: Scene): { wide: number; tall: number } {
  const spots = faces.flatMap(({ outline }) => outline.map(({ at }) => project(camera, at, 1)))
  const { left, right, top, bottom } = boxAround(spots)
  return { wide: right - left, tall: bottom - top }
}
