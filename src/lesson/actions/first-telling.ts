import type { Named } from '../prose/named.ts'
import type { Action, Thing } from './action.ts'
import type { Course } from './course.ts'

/** The first action, of those whose things are asked for, that names each piece without doubt. */
export function firstTelling(
  { actions, pieceOf }: Pick<Course, 'actions' | 'pieceOf'>,
  thingsOf: (action: Action) => readonly Thing[],
): Map<Named, Action> {
  const first = new Map<Named, Action>()
  for (const action of actions)
    for (const { named, sure } of thingsOf(action)) {
      const piece = sure ? pieceOf(named) : undefined
      if (piece && !first.has(piece)) first.set(piece, action)
    }
  return first
}
