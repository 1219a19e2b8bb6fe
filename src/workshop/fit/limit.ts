import { type Finding, hasErrors } from '../../length/finding.ts'
import type { Trial } from './trial.ts'

/** Why a size does not do. */
export interface Miss {
  /** What is in the way: the card itself, or something that was asked. */
  readonly limit: 'card' | 'lettering' | 'paper' | 'envelope' | 'whole'
  readonly message: string
  readonly suggestion?: string
}

/** Something that is asked of a size. */
export interface Limit {
  /** Whether it is plain from the size alone that it does not do. */
  tooLarge?(trial: Trial): boolean
  /** Whether it is plain without folding the card that this size does not do. */
  hopeless?(trial: Trial): boolean
  /** Why this size does not do, with the card proven; empty when it does. */
  misses(trial: Trial): Miss[]
}

/** Everything that keeps a size from being an answer. */
export function missesOf(trial: Trial, limits: readonly Limit[]): Miss[] {
  const { errors } = trial.proven()
  return [...distinct(errors.map(missOf)), ...limits.flatMap((limit) => limit.misses(trial))]
}

/** Whether a size does; the cheapest is asked first. */
export function does(trial: Trial, limits: readonly Limit[]): boolean {
  if (limits.some((limit) => limit.tooLarge?.(trial))) return false
  if ((trial.draft()?.errors.length ?? 0) > 0) return false
  if (limits.some((limit) => limit.hopeless?.(trial))) return false
  return trial.proven().errors.length === 0 && limits.every((limit) => limit.misses(trial).length === 0)
}

/** Whether a size does even when the steps of the lesson are read: the answer must print without errors. */
export const doesInFull = (trial: Trial, limits: readonly Limit[]): boolean =>
  does(trial, limits) && !hasErrors(trial.checked())

const missOf = ({ rule, message, suggestion }: Finding): Miss => ({
  limit: rule === 'letters-too-wide' ? 'lettering' : 'card',
  message,
  ...(suggestion !== undefined && { suggestion }),
})

const distinct = (misses: readonly Miss[]): Miss[] => [
  ...new Map(misses.map((miss) => [miss.message, miss])).values(),
]
