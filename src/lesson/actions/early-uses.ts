import type { Named } from '../prose/named.ts'
import type { Action, Thing } from './action.ts'
import { type Course, stepOf } from './course.ts'

/** Something is done with a piece in a step before the one that cuts it. */
export interface EarlyUse {
  readonly piece: Named
  readonly use: Action
  /** The step that cuts it. */
  readonly cutIn: number
}

/** The first use of each piece that comes too early, and names the piece without doubt. */
export function earlyUses({ actions, cuts, pieceOf }: Course): EarlyUse[] {
  return [...cuts].flatMap(([piece, { step }]) => {
    const isIt = ({ named, sure }: Thing): boolean => sure && pieceOf(named) === piece
    const use = actions.find(
      (action) =>
        stepOf(action) < step &&
        ((action.kind !== 'cut' && action.objects.some(isIt)) || action.onto.some(isIt)),
    )
    return use ? [{ piece, use, cutIn: step }] : []
  })
}
