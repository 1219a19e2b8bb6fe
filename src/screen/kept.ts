import type { Timing } from './timing.ts'

/** What is kept while the page is loaded again, for as long as its tab is open. */
export interface Kept {
  readonly read: (steps: number) => Timing | undefined
  readonly write: (timing: Timing) => void
  readonly forget: () => void
}

/** Keeps the times of a lesson in the tab. Where the browser keeps nothing, they begin again. */
export function keptIn(storage: () => Storage, title: string): Kept {
  const key = `class times: ${title}`
  const attempt = <T>(act: () => T): T | undefined => {
    try {
      return act()
    } catch {
      return undefined
    }
  }
  return {
    read: (steps) =>
      attempt(() => {
        const found = JSON.parse(storage().getItem(key) ?? 'null') as Timing | null
        return found && isTiming(found, steps) ? found : undefined
      }),
    write: (timing) => attempt(() => storage().setItem(key, JSON.stringify(timing))),
    forget: () => attempt(() => storage().removeItem(key)),
  }
}

/** Another edition of the lesson may have kept something else. */
const isTiming = ({ step, until, running, spent, extra, dryAt }: Timing, steps: number): boolean =>
  typeof running === 'boolean' &&
  Number.isFinite(until) &&
  (step === undefined || (Number.isInteger(step) && step >= 0 && step < steps)) &&
  [spent, extra, dryAt].every((list) => Array.isArray(list) && list.length === steps) &&
  [...spent, ...extra].every(Number.isFinite)
