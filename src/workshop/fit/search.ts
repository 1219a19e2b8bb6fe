import { does, doesInFull, type Limit, type Miss, missesOf } from './limit.ts'
import type { Trial } from './trial.ts'

/** Sizes one mark after another that all do, and what is in the way on both sides of them. */
export interface Range {
  readonly from: Trial
  readonly to: Trial
  readonly below: Beyond
  readonly above: Beyond
}

/** The next size, and why it does not do; nothing when the search ends there. */
export type Beyond = { readonly next: Trial; readonly misses: readonly Miss[] } | undefined

/** The largest size that does. Every larger one has been tried, for a larger card may do where a smaller does not. */
export const largest = (trials: readonly Trial[], limits: readonly Limit[]): Trial | undefined =>
  trials.findLast((trial) => doesInFull(trial, limits))

/** All that do, in ranges. */
export function ranges(trials: readonly Trial[], limits: readonly Limit[]): Range[] {
  const good = trials.map((trial) => does(trial, limits))
  return trials.flatMap((from, first): Range[] => {
    if (!good[first] || good[first - 1]) return []
    const end = good.indexOf(false, first)
    const last = (end < 0 ? good.length : end) - 1
    const to = trials[last] ?? from
    return [{ from, to, below: beyond(trials, first - 1, limits), above: beyond(trials, last + 1, limits) }]
  })
}

/** Why one mark larger does not do, with the card proven there. */
export const oneLarger = (trial: Trial, trials: readonly Trial[], limits: readonly Limit[]): Beyond =>
  beyond(trials, trials.indexOf(trial) + 1, limits)

function beyond(trials: readonly Trial[], at: number, limits: readonly Limit[]): Beyond {
  const next = trials[at]
  return next && { next, misses: missesOf(next, limits) }
}

/**
 * The sizes that get the most out of something, of those that do; several when they are equal.
 *
 * @param worth of a size from its draft, as far as it can be told without folding, or from the proven card.
 */
export function best(
  trials: readonly Trial[],
  limits: readonly Limit[],
  worth: (trial: Trial, proven: boolean) => number | undefined,
): Trial[] {
  const drafted = trials.map((trial) => ({ trial, hope: worth(trial, false) ?? Number.POSITIVE_INFINITY }))
  let found: { trials: Trial[]; worth: number } = { trials: [], worth: 0 }
  // The most promising first, so that few have to be folded.
  for (const { trial, hope } of drafted.sort((a, b) => b.hope - a.hope)) {
    if (hope < found.worth) break
    if (!doesInFull(trial, limits)) continue
    const is = worth(trial, true) ?? 0
    if (is > found.worth) found = { trials: [trial], worth: is }
    else if (is === found.worth) found.trials.push(trial)
  }
  return found.trials.sort((a, b) => trials.indexOf(a) - trials.indexOf(b))
}

/** The smallest size at which the card can be made at all. */
export const smallestMade = (trials: readonly Trial[]): Trial | undefined =>
  trials.find((trial) => does(trial, []))
