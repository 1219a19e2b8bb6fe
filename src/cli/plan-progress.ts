import type { Progress } from '../workshop/cutting/cutting.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'

/** A plan that takes longer than this, in milliseconds, says how far it is. */
const patience = 2000

/** Tells how far a cutting plan is, every few seconds, unless nothing is to be told. */
export function planProgress({ quiet, json }: Options, { stderr }: Outside): (progress: Progress) => void {
  let last = Date.now()
  return ({ stock, used, lowerBound, spent }) => {
    if (quiet || json || Date.now() - last < patience) return
    last = Date.now()
    const best = Number.isFinite(used)
      ? `${Math.ceil(used)} sheets, at least ${Math.ceil(lowerBound)} are needed`
      : 'no plan yet'
    stderr(`Planning ${stock}: ${best}; ${Math.round(spent * 100)} % of the search\n`)
  }
}
