import type { Fold, Structure } from '../../card/structure.ts'
import type { Pose, Vector } from '../../fold/pose.ts'
import { type Corner, type Face, facesOf } from '../face/face.ts'
import { flatLine } from '../plane.ts'
import { dot, inSpace, less, mix3 } from '../space.ts'

/** A crease of a sheet that lies flat, in space, as it is seen from the side of `normal`. */
export interface FlatCrease {
  readonly plate: string
  readonly ends: readonly [Vector, Vector]
  readonly fold: Fold
  readonly normal: Vector
}

/** The creases of flat sheets. */
export const creasesOf = ({ hinges }: Structure, pose: Pose): FlatCrease[] =>
  hinges.flatMap(({ between: [plate], line, fold }) => {
    const place = pose.get(plate)
    if (!place) return []
    const [a, b] = flatLine(line)
    return [{ plate, ends: [inSpace(place, a), inSpace(place, b)] as const, fold, normal: place.normal }]
  })

/** The faces of sheets that lie flat: their edges are only where they are cut, for creases are drawn by themselves. */
export function flatFaces(structure: Structure, pose: Pose): Face[] {
  return facesOf(structure, pose).map((face) => {
    const own = structure.hinges
      .filter(({ between }) => between.includes(face.plate.name))
      .map(({ line }) => flatLine(line).map((end) => inSpace(face.place, end)))
    const outline = face.outline.flatMap((corner, i) =>
      edgeParts(corner, face.outline[(i + 1) % face.outline.length] ?? corner, own),
    )
    return { ...face, outline }
  })
}

/** An edge as its parts, those along a crease not drawn. */
function edgeParts(corner: Corner, next: Corner, creases: readonly (readonly Vector[])[]): Corner[] {
  const whole = less(next.at, corner.at)
  const long = Math.hypot(...whole)
  const folded = creases
    .flatMap((ends): (readonly [number, number])[] => {
      const shares = ends.map((end) => dot(less(end, corner.at), whole) / (long * long))
      const aside = ends.map((end, i) => Math.hypot(...less(end, mix3(corner.at, next.at, shares[i] ?? 0))))
      if (Math.max(...aside) > 0.01) return []
      const [from, to] = [Math.max(0, Math.min(...shares)), Math.min(1, Math.max(...shares))]
      return to - from > 1e-6 ? [[from, to]] : []
    })
    .sort((a, b) => a[0] - b[0])
  const parts: Corner[] = []
  let at = 0
  const add = (share: number, edge: Corner['edge']) => {
    if (share - at < 1e-6) return
    parts.push({ at: mix3(corner.at, next.at, at), edge })
    at = share
  }
  for (const [from, to] of folded) {
    add(from, 'cut')
    add(to, 'split')
  }
  add(1, 'cut')
  return parts
}
