import type { Demands } from './equations.ts'
import type { Linkage } from './linkage.ts'
import { blend, farthest, solveFolds } from './solve.ts'

/** The folds at one moment between shut (share 0) and standing (share 1). */
export interface Moment {
  readonly share: number
  readonly folds: readonly number[]
  /** Where each rest touches; empty while rests do not touch yet. */
  readonly reach: readonly number[]
}

/** A way to open the card, from shut as far as it goes. */
export interface Opening {
  readonly moments: readonly Moment[]
  /** Joints that are led; the others follow. */
  readonly led: readonly number[]
  /** Whether it gets to share 1. */
  readonly arrives: boolean
}

/** What is asked of the end: joints led to a fold. */
export type Drives = readonly { readonly joint: number; readonly fold: number }[]

/** Demands after `share` of the way. */
export type Course = (share: number) => Demands

/** Folds may change by this much, in radians, from one moment to the next; more is a jump to another branch. */
const largestStep = 0.8
/** How far from shut the folds may be just after the start. */
const nearShut = 0.2
const steps = Array.from({ length: 16 }, (_, i) => (i + 1) / 16)
const closeToShut = [1 / 64, 1 / 256, 1 / 1024]

/**
 * Leads joints from shut to their angles, while rings stay closed.
 *
 * Shut, all bars lie on one line and the loop equations do not tell which way they will go; the directions of the
 * creases do. So a state that is open some way is solved first, from a guess in which every crease has opened the way
 * it can, and followed back until it is all but shut (which proves that the one comes from the other), and on.
 */
export function openByLeading(
  linkage: Linkage,
  shut: readonly number[],
  moving: readonly number[],
  drives: Drives,
): Opening | undefined {
  const led = drives.map(({ joint }) => joint)
  const course: Course = (share) => ({
    held: drives.map(({ joint, fold }) => ({
      joint,
      fold: (shut[joint] ?? 0) + share * (fold - (shut[joint] ?? 0)),
    })),
    reach: [],
  })
  const swing = drives.reduce(
    (most, { joint, fold }) => Math.max(most, Math.abs(fold - (shut[joint] ?? 0))),
    0,
  )
  for (const start of [1, 0.5, 0.25, 1 / 16])
    for (const spread of [1, 0.5, 1.5, 0.25, 2.5]) {
      const guess = opened(shut, moving, Math.min(swing * start * spread, 3))
      for (const { joint, fold } of course(start).held) guess[joint] = fold
      const folds = solveFolds(linkage, moving, guess, course(start))
      if (!folds) continue
      const first = { share: start, folds, reach: [] }
      const back = [...steps.filter((s) => s < start).reverse(), ...closeToShut]
      const before = follow(linkage, moving, course, first, back)
      const last = before.at(-1) ?? first
      if (last.share !== back.at(-1) || farthest(last.folds, shut) > nearShut) continue
      const after = follow(
        linkage,
        moving,
        course,
        first,
        steps.filter((s) => s > start),
        before[0],
      )
      const moments = [{ share: 0, folds: shut, reach: [] }, ...before.reverse(), first, ...after]
      return { moments, led, arrives: moments.at(-1)?.share === 1 }
    }
  return undefined
}

/** Every moving joint opened by `by`: flat ones bend, shut ones unfold. */
export function opened(shut: readonly number[], moving: readonly number[], by: number): number[] {
  const folds = [...shut]
  for (const joint of moving) {
    const fold = shut[joint] ?? 0
    folds[joint] = fold > Math.PI / 2 ? fold - by : fold + by
  }
  return folds
}

/** Follows a course from `start` through `shares`, as far as it can be followed without a jump or a wrong bend. */
export function follow(
  linkage: Linkage,
  moving: readonly number[],
  course: Course,
  start: Moment,
  shares: readonly number[],
  behind?: Moment,
): Moment[] {
  const way: Moment[] = []
  let [before, last] = [behind, start]
  const step = (to: number, halvings: number): boolean => {
    const rate = before ? (to - last.share) / (last.share - before.share) : 0
    const guess = before ? blend(before.folds, last.folds, 1 + rate) : [...last.folds]
    const demands = course(to)
    for (const { joint, fold } of demands.held) guess[joint] = fold
    const folds = solveFolds(linkage, moving, guess, demands)
    if (folds && farthest(folds, last.folds) < largestStep) {
      before = last
      last = { share: to, folds, reach: demands.reach }
      way.push(last)
      return true
    }
    return halvings > 0 && step((last.share + to) / 2, halvings - 1) && step(to, halvings - 1)
  }
  for (const share of shares) if (!step(share, 5)) break
  return way
}
