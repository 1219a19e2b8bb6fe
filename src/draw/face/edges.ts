import type { Vector } from '../../fold/pose.ts'
import type { Camera } from '../camera.ts'
import { dot, less, mix3 } from '../space.ts'
import type { Corner, Face } from './face.ts'

/** An edge of a face that is drawn, or the part of it that no other face draws. */
export interface FaceEdge {
  readonly from: Vector
  readonly to: Vector
  /** An edge is where the sheet ends for the eye: cut, or turned away from it at a crease. */
  readonly kind: 'edge' | 'fold'
}

/**
 * The edges that are drawn with each face. A crease belongs to two faces and is drawn once, with the one that is painted
 * later, so that nothing lies over a half of it.
 *
 * @param faces in the order in which they are painted.
 */
export function edgesOf(faces: readonly Face[], camera: Camera): FaceEdge[][] {
  return faces.map((face, i) =>
    [face.outline, ...face.holes].flatMap((loop) =>
      loop.flatMap((corner, n): FaceEdge[] => {
        const [from, to] = [corner.at, (loop[(n + 1) % loop.length] ?? corner).at]
        if (corner.edge === 'split') return []
        if (corner.edge === 'cut') return [{ from, to, kind: 'edge' }]
        const others = faces.filter((other) => other !== face && isBeyond(other, corner, face))
        const kind = isTurned(face, others[0], from, to, camera) ? 'edge' : 'fold'
        const later = others.filter((other) => faces.indexOf(other) > i)
        return without(
          from,
          to,
          later.flatMap((other) => creasesTo(other, face)),
        ).map((part) => ({
          ...part,
          kind,
        }))
      }),
    ),
  )
}

const isBeyond = (other: Face, { beyond }: Corner, { plate, piece }: Face): boolean =>
  beyond === undefined
    ? other.piece === piece && other.plate !== plate
    : other.plate.name === beyond && other.piece === piece

/** The creases of a face towards another. */
const creasesTo = (face: Face, { plate }: Face): (readonly [Vector, Vector])[] =>
  face.outline.flatMap((corner, i) =>
    corner.edge === 'crease' && corner.beyond === plate.name
      ? [[corner.at, (face.outline[(i + 1) % face.outline.length] ?? corner).at] as const]
      : [],
  )

/** The parts of a straight line along which no other runs. */
function without(
  from: Vector,
  to: Vector,
  others: readonly (readonly [Vector, Vector])[],
): Pick<FaceEdge, 'from' | 'to'>[] {
  const whole = less(to, from)
  const long = dot(whole, whole)
  const share = (p: Vector): number => dot(less(p, from), whole) / long
  const aside = (p: Vector): number => Math.hypot(...less(p, mix3(from, to, share(p))))
  const free = others
    .filter((ends) => ends.every((end) => aside(end) < together))
    .map((ends) => ends.map(share).sort((a, b) => a - b) as [number, number])
    .reduce<(readonly [number, number])[]>(
      (left, [a, b]) =>
        left.flatMap(([start, end]): (readonly [number, number])[] => [
          [start, Math.min(end, a)],
          [Math.max(start, b), end],
        ]),
      [[0, 1]],
    )
  return free
    .filter(([a, b]) => b - a > 1e-4)
    .map(([a, b]) => ({ from: mix3(from, to, a), to: mix3(from, to, b) }))
}

/** Two sheets that a crease joins are drawn by its middle, but what is folded over others lies a little off, in mm. */
const together = 1

/** Whether the sheet turns away at a crease: both its panels lie to the same side of it on the paper. */
function isTurned(face: Face, other: Face | undefined, from: Vector, to: Vector, camera: Camera): boolean {
  const image = (p: Vector): readonly [number, number] => [dot(p, camera.right), dot(p, camera.up)]
  const [a, b] = [image(from), image(to)]
  const side = ({ outline }: Face): number =>
    Math.sign(
      outline.reduce((sum, { at }) => {
        const p = image(at)
        return sum + (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])
      }, 0),
    )
  return other === undefined || side(other) === side(face)
}
