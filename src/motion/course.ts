import { between, packed, type Rigid, still, unpacked, within } from './rigid.ts'
import type { CardTold } from './told.ts'

/** Where every plate of a card is, at any moment. */
export interface Course {
  readonly first: number
  readonly last: number
  /** In the order of the plates. */
  readonly placesAt: (moment: number) => Rigid[]
}

/** Reads where things are off what was written. */
export function courseOf({ at, groups, plates }: Pick<CardTold, 'at' | 'groups' | 'plates'>): Course {
  const known = groups.map((numbers) => decoded(numbers))
  const held = plates.map((plate) => unpacked(plate.held))
  return {
    first: at[0] ?? 0,
    last: at.at(-1) ?? 0,
    placesAt(moment) {
      const { step, share } = stepAt(at, moment)
      const now = known.map((all): Rigid => {
        const [a, b] = [all[step] ?? all[0] ?? still, all[step + 1] ?? all[0] ?? still]
        return a === b ? a : between(a, b, share)
      })
      return plates.map(({ group }, i) => within(now[group] ?? still, held[i] ?? still))
    },
  }
}

/** The known moment before this one, and how far it is on the way to the next. */
export function stepAt(at: readonly number[], moment: number): { step: number; share: number } {
  const next = at.findIndex((known) => known > moment)
  const step = Math.max(0, (next < 0 ? at.length - 1 : next) - 1)
  const [from = 0, to = from] = [at[step], at[step + 1]]
  return { step, share: to > from ? Math.min(1, Math.max(0, (moment - from) / (to - from))) : 0 }
}

/** Places as the differences from one moment to the next; seven numbers when they are all the same. */
export function encoded(places: readonly Rigid[]): number[] {
  const all = places.map(packed)
  // A turn and its opposite are the same: each keeps to the side of the one before, as it was written.
  for (const [i, seven] of all.entries()) {
    const before = all[i - 1]
    if (before && [3, 4, 5, 6].reduce((sum, k) => sum + (seven[k] ?? 0) * (before[k] ?? 0), 0) < 0)
      for (const k of [3, 4, 5, 6]) seven[k] = -(seven[k] ?? 0)
  }
  const steps = all.map((seven, i) => seven.map((n, k) => n - (all[i - 1]?.[k] ?? 0)))
  return steps.slice(1).every((step) => step.every((n) => n === 0)) ? (all[0] ?? []) : steps.flat()
}

function decoded(numbers: readonly number[]): Rigid[] {
  const all: Rigid[] = []
  const seven = [0, 0, 0, 0, 0, 0, 0]
  for (let i = 0; i < numbers.length; i += 7) {
    for (let k = 0; k < 7; k++) seven[k] = (seven[k] ?? 0) + (numbers[i + k] ?? 0)
    all.push(unpacked(seven))
  }
  return all
}
