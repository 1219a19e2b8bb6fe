import { encoded } from '../../motion/course.ts'
import { inverse, packed, type Rigid, spotOf, type Vector, within } from '../../motion/rigid.ts'
import { centred, distance, type Frame, middleOf } from './frames.ts'

/** Plates that keep together to so many mm move as one. */
const together = 0.004

/** What moves as one, and where each plate is in it. */
export interface Groups {
  readonly at: readonly number[]
  readonly groups: readonly (readonly number[])[]
  readonly members: ReadonlyMap<string, Member>
}

export interface Member {
  readonly group: number
  readonly held: readonly number[]
  /** The moment from which the plate is there. */
  readonly joins: number
}

/** Gathers the plates that move as one, so that their way is written once. A plate that is missing at first joins later. */
export function groupsOf(frames: readonly Frame[], corners: ReadonlyMap<string, readonly Vector[]>): Groups {
  const leaders: { places: readonly Rigid[]; since: number }[] = []
  const members = new Map<string, Member>()
  const known = [...corners]
    .map(([name, own]) => ({ name, own, since: frames.findIndex(({ places }) => places.has(name)) }))
    .filter(({ since }) => since >= 0)
    .sort((a, b) => a.since - b.since)
  for (const { name, own, since } of known) {
    const places = frames.map(({ places: at }) => at.get(name) ?? (frames[since]?.places.get(name) as Rigid))
    const joins = since === 0 ? 0 : (frames[since]?.at ?? 0)
    const group = leaders.findIndex((leader) => keepsTo(leader.places, places, own, since))
    const leader = leaders[group]
    const held = leader && heldIn(leader.places, places)
    if (held) members.set(name, { group, held: packed(held), joins })
    else {
      const middle = middleOf(own)
      const back: Rigid = { at: [-middle[0], -middle[1], -middle[2]], turn: [0, 0, 0, 1] }
      leaders.push({ places: places.map((place) => centred(place, middle)), since })
      members.set(name, { group: leaders.length - 1, held: packed(back), joins })
    }
  }
  return {
    at: frames.map(({ at }) => Math.round(at * 1e5) / 1e5),
    groups: leaders.map(({ places }) => encoded(places)),
    members,
  }
}

/** Measured at the last moment, when all is there. */
function heldIn(leader: readonly Rigid[], places: readonly Rigid[]): Rigid | undefined {
  const [whole, part] = [leader.at(-1), places.at(-1)]
  return whole && part && within(inverse(whole), part)
}

function keepsTo(
  leader: readonly Rigid[],
  places: readonly Rigid[],
  corners: readonly Vector[],
  since: number,
): boolean {
  const held = heldIn(leader, places)
  return (
    held !== undefined &&
    places.every((place, i) => {
      const whole = leader[i]
      if (i < since || !whole) return true
      const there = within(whole, held)
      return corners.every((corner) => distance(spotOf(there, corner), spotOf(place, corner)) < together)
    })
  )
}
