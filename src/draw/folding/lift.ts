import type { Pose, Vector } from '../../fold/pose.ts'
import { sum } from '../../fold/space.ts'
import { flatLoop } from '../plane.ts'
import { inSpace } from '../space.ts'
import { length } from './moves.ts'
import type { Way } from './way.ts'

/** How far pieces are lifted off what they are stuck on, as a share of the longer side of the larger of the two. */
const share = 0.3

/** By how much the pieces that are about to be stuck on are lifted off their places: out of the sides they go on. */
function liftOf({ structure }: Pick<Way, 'structure'>, pose: Pose, joins: readonly string[]): Vector {
  const isNew = (name: string): boolean => joins.includes(name)
  const out = structure.bonds.reduce<Vector>(
    (all, { plate, onto, side }) => {
      const at = pose.get(onto)
      if (!at || !pose.has(plate) || isNew(plate) === isNew(onto)) return all
      const outwards = side === 'face' ? 1 : -1
      // Of what is stuck under a piece that is there, the piece is what goes on.
      return sum(all, at.normal, isNew(plate) ? outwards : -outwards)
    },
    [0, 0, 0],
  )
  const long = length(out)
  const far = share * largest(structure, pose)
  // What goes in between, from above.
  return long < 0.5
    ? [0, far * 1.6, 0]
    : [(out[0] / long) * far, (out[1] / long) * far, (out[2] / long) * far]
}

/** The pose with these plates lifted off. */
export function lifted(way: Pick<Way, 'structure'>, pose: Pose, joins: readonly string[]): Pose {
  const by = liftOf(way, pose, joins)
  return new Map(
    [...pose].map(([name, place]) => [
      name,
      joins.includes(name) ? { ...place, origin: sum(place.origin, by) } : place,
    ]),
  )
}

function largest({ plates }: Way['structure'], pose: Pose): number {
  const corners = plates.flatMap(({ name, outline }) => {
    const place = pose.get(name)
    return place ? flatLoop(outline).map((p) => inSpace(place, p)) : []
  })
  const spans = [0, 1, 2].map((k) => {
    const all = corners.map((corner) => corner[k] ?? 0)
    return Math.max(...all) - Math.min(...all)
  })
  return Math.max(...spans)
}
