import type { Fold } from '../../card/structure.ts'
import type { Vector } from '../../fold/pose.ts'
import { sum } from '../../fold/space.ts'
import type { Camera } from '../camera.ts'
import { type Face, facesOf } from '../face/face.ts'
import { paintOrder } from '../sort.ts'
import { dot } from '../space.ts'
import { makePalette } from '../stock.ts'
import { dropsOf, withoutDoubles } from './drops.ts'
import { creasesOf, flatFaces } from './faces.ts'
import type { Scene } from './scene.ts'
import { isSeen, pointsOn, screensOf, seenParts } from './seen.ts'
import { lifted, offsetsAt, stepOf } from './step.ts'

/** What is drawn of a scene, in mm of the card: only what is seen of lines. */
export interface Picture {
  /** How far one step lifts. */
  readonly step: number
  /** From the farthest to the nearest. */
  readonly faces: readonly Face[]
  /** From the corners of what is lifted to where they land. */
  readonly drops: readonly (readonly [Vector, Vector])[]
  readonly creases: readonly { readonly fold: Fold; readonly ends: readonly [Vector, Vector] }[]
  /** A spot of each piece that is seen, as far to the right as can be. */
  readonly points: ReadonlyMap<string, Vector>
}

/** What is drawn, whatever the scale. */
export function pictureOf(scene: Scene): Picture {
  const { structure, camera, pose, parts } = scene
  const palette = makePalette(structure)
  const isFilm = (face: Face): boolean => palette(face.piece.stock).film
  const still = scene.isFlat ? flatFaces(structure, pose) : facesOf(structure, pose)
  const step = stepOf(scene, still, isFilm)
  const offset = offsetsAt(scene, step)
  const by = (plate: string): Vector => offset(parts.partOf(plate))
  const faces = still.map((face) => lifted(face, by(face.plate.name)))
  const screens = screensOf(faces, camera, isFilm)
  const drops = dropsOf(structure, parts.holds, pose, by)
  const creases = scene.isFlat ? creasesOf(structure, pose) : []
  return {
    step,
    faces: paintOrder(faces, structure, camera),
    drops: withoutDoubles(
      drops.flatMap((one) => seenParts(one, screens, camera)),
      camera,
    ),
    creases: creases.flatMap(({ plate, ends, fold, normal }) => {
      const moved = [sum(ends[0], by(plate)), sum(ends[1], by(plate))] as const
      const seen = dot(normal, camera.eye) > 0 ? fold : fold === 'valley' ? 'mountain' : 'valley'
      return seenParts(moved, screens, camera).map((part) => ({ fold: seen, ends: part }) as const)
    }),
    points: pointsToName(faces, screens, camera),
  }
}

/** The rightmost spot of each piece that is seen, or, of one that is hidden, any. */
function pointsToName(
  faces: readonly Face[],
  screens: ReturnType<typeof screensOf>,
  camera: Camera,
): Map<string, Vector> {
  const seen = new Map<string, Vector>()
  const any = new Map<string, Vector>()
  for (const face of faces)
    for (const at of pointsOn(face, 12)) {
      const best = seen.get(face.piece.name)
      const isBetter = best === undefined || dot(at, camera.right) > dot(best, camera.right)
      if (isBetter && isSeen(at, screens, camera)) seen.set(face.piece.name, at)
      else if (!any.has(face.piece.name)) any.set(face.piece.name, at)
    }
  return new Map([...any, ...seen])
}
