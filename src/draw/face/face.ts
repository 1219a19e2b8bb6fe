import type { Piece, Plate, Structure } from '../../card/structure.ts'
import type { Placement, Pose, Vector } from '../../fold/pose.ts'
import { clipLoop } from '../clip.ts'
import { type Flat, flatLine, flatLoop } from '../plane.ts'
import { dot, inSpace, less, mix3 } from '../space.ts'

/** What kind of edge runs from a corner to the next: cut, folded, or only where a face was split to be sorted. */
type EdgeKind = 'cut' | 'crease' | 'split'

export interface Corner {
  readonly at: Vector
  readonly edge: EdgeKind
  /** The plate beyond a crease. */
  readonly beyond?: string
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
    const creases = structure.hinges.flatMap(({ between: [a, b], line }): Crease[] =>
      plate.name === a || plate.name === b
        ? [{ line: flatLine(line), beyond: plate.name === a ? b : a }]
        : [],
    )
    const flat = flatLoop(plate.outline)
    const outline = flat.flatMap((p, i) =>
      edgeParts(p, flat[(i + 1) % flat.length] ?? p, creases).map(
        ({ from, ...kind }): Corner => ({ at: inSpace(place, from), ...kind }),
      ),
    )
    const holes = plate.holes.map((hole) =>
      flatLoop(hole).map((p): Corner => ({ at: inSpace(place, p), edge: 'cut' })),
    )
    return [{ plate, piece, place, outline, holes }]
  })
}

interface Crease {
  readonly line: readonly [Flat, Flat]
  readonly beyond: string
}

interface EdgePart extends Omit<Corner, 'at'> {
  readonly from: Flat
}

/** An edge of a plate in parts: where creases run along it, and between them where it is cut. */
function edgeParts(a: Flat, b: Flat, creases: readonly Crease[]): EdgePart[] {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const long = Math.hypot(dx, dy)
  const along = ([x, y]: Flat): number => ((x - a[0]) * dx + (y - a[1]) * dy) / long
  const aside = ([x, y]: Flat): number => Math.abs((x - a[0]) * dy - (y - a[1]) * dx) / long
  const at = (way: number): Flat => [a[0] + (dx * way) / long, a[1] + (dy * way) / long]
  const folded = creases
    .filter(({ line }) => line.every((end) => aside(end) < still))
    .map(({ line, beyond }) => {
      const [from, to] = line.map(along).sort((p, q) => p - q) as [number, number]
      return { from: Math.max(0, from), to: Math.min(long, to), beyond }
    })
    .filter(({ from, to }) => to - from > still)
    .sort((p, q) => p.from - q.from)
  const parts: EdgePart[] = []
  let reached = 0
  for (const { from, to, beyond } of folded) {
    if (from - reached > still) parts.push({ from: at(reached), edge: 'cut' })
    parts.push({ from: at(from), edge: 'crease', beyond })
    reached = to
  }
  return long - reached > still ? [...parts, { from: at(reached), edge: 'cut' }] : parts
}

/** Flat points nearer than this, in mm, are the same. */
const still = 1e-5

/** Height of a point over the plane of a face, on the side that the face looks to, in mm. */
export const over = (face: Face, p: Vector): number => dot(less(p, face.place.origin), face.place.normal)

/** The parts of a face behind and before the plane of another; one of them only, if the plane misses it. */
export function split(face: Face, by: Face): Face[] {
  const part = (sign: 1 | -1): Face[] => {
    const cut = (loop: readonly Corner[]) =>
      clipLoop(
        loop,
        (corner) => sign * over(by, corner.at),
        (a, b, share, leaving): Corner => {
          const at = mix3(a.at, b.at, share)
          return leaving ? { at, edge: 'split' } : { ...a, at }
        },
      )
    const outline = cut(face.outline)
    if (outline.length < 3 || Math.max(...outline.map((c) => Math.abs(over(by, c.at)))) < 1e-6) return []
    return [{ ...face, outline, holes: face.holes.map(cut).filter((hole) => hole.length > 2) }]
  }
  return [...part(-1), ...part(1)]
}
