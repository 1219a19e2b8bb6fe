import { ontoPanel } from '../../card/onto.ts'
import type { Bond } from '../../card/structure.ts'
import { movedTo } from '../../fold/place.ts'
import type { Placement, Pose } from '../../fold/pose.ts'
import { along, atHome, spotAt, sum } from '../../fold/space.ts'
import { dot, less } from '../space.ts'
import type { Hold, Part, Parts, Support } from './parts.ts'

/** On the table, face up, its lower edge towards the viewer. */
const onTable: Placement = { origin: [0, 0, 0], right: [1, 0, 0], up: [0, 0, -1], normal: [0, 1, 0] }

/**
 * All sheets unfolded, as they lie on one another, with the grounds on the table; undefined when a bond would tear.
 *
 * @param known a pose of the folded card, which tells how far above one another sheets lie.
 */
export function flatPose(
  { all, holds }: Parts,
  grounds: readonly Part[],
  supports: ReadonlyMap<Part, Support>,
  known: Pose,
): Pose | undefined {
  const places = new Map<Part, Placement>(grounds.map((part) => [part, onTable]))
  for (const [part, { hold, on }] of supports) {
    const base = places.get(on)
    if (!base) continue
    const stuck = stuckOn(atHome, hold, known)
    places.set(part, hold.under === on ? stuckOn(base, hold, known) : movedTo(stuck, base)(atHome))
  }
  const holdsTogether = holds.every((hold) => {
    const [at, base] = [places.get(hold.part), places.get(hold.under)]
    return !at || !base || isSame(at, stuckOn(base, hold, known))
  })
  if (!holdsTogether) return undefined
  return new Map(
    all.flatMap((part) => {
      const place = places.get(part)
      return place ? part.plates.map((name) => [name, place] as const) : []
    }),
  )
}

/** Where a sheet is that is stuck on one in a known place. */
function stuckOn(base: Placement, { bond }: Hold, known: Pose): Placement {
  const carry = ontoPanel(bond)
  const [o, x, y] = [carry([0, 0]), carry([1, 0]), carry([0, 1])]
  const [nx, ny, nz] = base.normal
  return {
    origin: sum(spotAt(base, o[0], o[1]), base.normal, gapOf(bond, known)),
    right: along(base, x[0] - o[0], x[1] - o[1]),
    up: along(base, y[0] - o[0], y[1] - o[1]),
    normal: bond.over ? [-nx, -ny, -nz] : base.normal,
  }
}

/** How far a plate lies in front of the one it is stuck on, in mm; behind it, less than nothing. */
function gapOf({ plate, onto, side }: Bond, known: Pose): number {
  const [at, base] = [known.get(plate), known.get(onto)]
  return at && base ? dot(less(at.origin, base.origin), base.normal) : side === 'face' ? 0.3 : -0.3
}

/** How far sheets may lie apart that are said to be stuck together, in mm: they slant by their thickness. */
const loose = 1

const isSame = (a: Placement, b: Placement): boolean =>
  (
    [
      [0, 0],
      [300, 0],
      [0, 300],
    ] as const
  ).every(([x, y]) => {
    const d = less(spotAt(a, x, y), spotAt(b, x, y))
    return Math.hypot(...d) < loose
  })
