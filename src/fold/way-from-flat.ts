import type { Display } from '../card/structure.ts'
import { crossingsAt, evenly } from './crossings.ts'
import { drivesOf } from './joints.ts'
import { foldsOn } from './motion.ts'
import { type Course, follow, type Moment } from './opening.ts'
import type { Sheet } from './sheet.ts'
import { blend, farthest } from './solve.ts'

/** Creases that bend together, from where the leg before has left them. */
export interface Leg {
  /** The largest change of a crease, in radians. */
  readonly weight: number
  /** The links that bend. */
  readonly bends: readonly number[]
  /** The folds of all links after a share of this leg. */
  readonly foldsAt: (share: number) => readonly number[]
}

/** A leg from one state to another in which each crease bends evenly. */
function leg(from: readonly number[], to: readonly number[]): Leg {
  return {
    weight: farthest(from, to),
    bends: to.flatMap((fold, i) => (Math.abs(fold - (from[i] ?? 0)) > 1e-9 ? [i] : [])),
    foldsAt: (share) => blend(from, to, share),
  }
}

/** Legs through states, those left out in which nothing bends. */
const legsThrough = (states: readonly (readonly number[])[]): Leg[] =>
  states.slice(1).flatMap((to, i) => {
    const one = leg(states[i] ?? to, to)
    return one.bends.length > 0 ? [one] : []
  })

/** From flat to `folds` crease by crease in an order; the creases that it leaves out, all at once in the end. */
export function legsByHand(
  sheet: Sheet,
  folds: readonly number[],
  order: readonly number[] | undefined,
): Leg[] {
  if (!order) return legsFreely(sheet, folds)
  const states = [folds.map(() => 0)]
  for (const link of order) states.push((states.at(-1) ?? []).with(link, folds[link] ?? 0))
  return legsThrough([...states, [...folds]])
}

/** From flat to `folds`; a sheet with slits closes its rings on the way. */
export function legsTogether(sheet: Sheet, folds: readonly number[], display: Display): Leg[] {
  if (sheet.rings.cycles.length > 0) return [led(sheet, folds, display)]
  const legs = legsFreely(sheet, folds)
  // A sheet that stands flat is still there before anything is stuck on it.
  return legs.length > 0 ? legs : [leg(folds, folds)]
}

/** All creases at once if nothing meets on the way, or else one after the other, from whichever end meets less. */
function legsFreely(sheet: Sheet, folds: readonly number[]): Leg[] {
  const links = folds.flatMap((fold, i) => (fold > 0 ? [i] : []))
  const inOrder = (order: readonly number[]): Leg[] => {
    const states = [folds.map(() => 0)]
    for (const link of order) states.push((states.at(-1) ?? []).with(link, folds[link] ?? 0))
    return legsThrough(states)
  }
  const ways = [legsThrough([folds.map(() => 0), folds]), inOrder(links), inOrder([...links].reverse())]
  const [first = []] = ways
  return ways.find((legs) => !meetsOn(sheet, legs)) ?? first
}

/** Whether plates run through each other on the way. What touches at the very end lies on one another. */
const meetsOn = ({ assembly, linkage }: Sheet, legs: readonly Leg[]): boolean =>
  legs.some(
    ({ foldsAt }) =>
      crossingsAt(
        assembly,
        linkage,
        evenly((share) => foldsAt(share)),
      ).length > 0,
  )

/**
 * From flat to `folds` while rings stay closed: followed back from there, where it is known which way every crease has
 * gone, with the creases led that the card is shown standing by.
 */
function led({ assembly, rings, linkage }: Sheet, folds: readonly number[], display: Display): Leg {
  const start = folds.map(() => 0)
  const drives = drivesOf(assembly, display, [])
  const moving = folds.flatMap((_, i) => (rings.groupOf[i] === -1 ? [] : [i]))
  const first: Moment = { share: 1, folds, reach: [] }
  const lead = drives.filter(({ joint }) => moving.includes(joint)).map(({ joint }) => joint)
  const course: Course = (share) => ({
    held: lead.map((joint) => ({ joint, fold: share * (folds[joint] ?? 0) })),
    reach: [],
  })
  const back = follow(linkage, moving, course, first, shares)
  const moments = [{ share: 0, folds: start, reach: [] }, ...back.reverse(), first]
  const straight = leg(start, folds)
  return {
    ...straight,
    foldsAt(share) {
      const solved = foldsOn(linkage, moving, { moments, led: lead, arrives: true }, share)
      const even = straight.foldsAt(share)
      // What hangs on the rings bends evenly. All but flat, the equations have no one answer, and a blend is as good.
      return solved ? even.map((fold, i) => (moving.includes(i) ? (solved[i] ?? fold) : fold)) : even
    },
  }
}

/** Where the way back from standing is solved; nearer to flat than the last, it is blended. */
const shares = Array.from({ length: 15 }, (_, i) => (15 - i) / 16)
