import type { Piece, Plate, Structure } from '../card/structure.ts'
import type { Placement, Pose, Vector } from '../fold/pose.ts'
import { clipLoop } from './clip.ts'
import { flatLoop } from './plane.ts'
import { dot, inSpace, less, mix3 } from './space.ts'

/** What kind of edge runs from a corner to the next: cut, folded, or only where a face was split to be sorted. */
type EdgeKind = 'cut' | 'crease' | 'split'

export interface Corner {
  readonly at: Vector
  readonly edge: EdgeKind
}

/** A plate in space, or a part of one. */
export interface Face {
  readonly plate: Plate
  readonly piece: Piece
  readonly place: Placement
  readonly outline: readonly Corner[]
  readonly holes: readonly (readonly Corner[])[]
}

/** All plates that have a place, in the order of the structure. */
export function facesOf(structure: Structure, pose: Pose): Face[] {
  return structure.plates.flatMap((plate): Face[] => {
    const [place, piece] = [pose.get(plate.name), structure.pieces.find((p) => p.name === plate.piece)]
    if (!place || !piece) return []
    const creases = structure.hinges
      .filter((h) => h.between.includes(plate.name))
      .map((h) => flatLoop([h.line.from, h.line.to]))
    const flat = flatLoop(plate.outline)
    const outline = flat.map((p, i): Corner => {
      const next = flat[(i + 1) % flat.length] ?? p
      const folded = creases.some((crease) => crease.every((q) => onLine(q, p, next)))
      return { at: inSpace(place, p), edge: folded ? 'crease' : 'cut' }
    })
    const holes = plate.holes.map((hole) =>
      flatLoop(hole).map((p): Corner => ({ at: inSpace(place, p), edge: 'cut' })),
    )
    return [{ plate, piece, place, outline, holes }]
  })
}

type Flat = readonly [number, number]

function onLine(q: Flat, a: Flat, b: Flat): boolean {
  const cross = (q[0] - a[0]) * (b[1] - a[1]) - (q[1] - a[1]) * (b[0] - a[0])
  return Math.abs(cross) < 1e-6 * Math.max(1, Math.hypot(b[0] - a[0], b[1] - a[1]))
}

/** Height of a point over the plane of a face, on the side that the face looks to, in mm. */
export const over = (face: Face, p: Vector): number => dot(less(p, face.place.origin), face.place.normal)

/** The parts of a face behind and before the plane of another; one of them only, if the plane misses it. */
export function split(face: Face, by: Face): Face[] {
  const part = (sign: 1 | -1): Face[] => {
    const cut = (loop: readonly Corner[]) =>
      clipLoop(
        loop,
        (corner) => sign * over(by, corner.at),
        (a, b, share, leaving): Corner => ({ at: mix3(a.at, b.at, share), edge: leaving ? 'split' : a.edge }),
      )
    const outline = cut(face.outline)
    if (outline.length < 3 || Math.max(...outline.map((c) => Math.abs(over(by, c.at)))) < 1e-6) return []
    return [{ ...face, outline, holes: face.holes.map(cut).filter((hole) => hole.length > 2) }]
  }
  return [...part(-1), ...part(1)]
}
