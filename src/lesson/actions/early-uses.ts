import type { Named } from '../prose/named.ts'
import type { Action } from './action.ts'
import { type Course, stepOf } from './course.ts'
import { firstTelling } from './first-telling.ts'

/** Something is done with a piece in a step before the one that cuts it. */
export interface EarlyUse {
  readonly piece: Named
  readonly use: Action
  /** The step that cuts it. */
  readonly cutIn: number
}

/** The first use of each piece that comes too early, and names the piece without doubt. */
export function earlyUses(course: Course): EarlyUse[] {
  const first = firstTelling(course, ({ kind, objects, onto }) =>
    kind === 'cut' ? onto : [...objects, ...onto],
  )
  return [...course.cuts].flatMap(([piece, { step }]) => {
    const use = first.get(piece)
    return use && stepOf(use) < step ? [{ piece, use, cutIn: step }] : []
  })
}
