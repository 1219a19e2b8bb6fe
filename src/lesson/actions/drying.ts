import type { Step } from '../lesson.ts'
import type { Named } from '../prose/named.ts'
import type { Action, Thing } from './action.ts'
import { type Course, stepOf } from './course.ts'

/**
 * Steps with what dries, and which step must wait for it: the next one that does something to the same piece, puts
 * something on it, or takes all pieces at once. Where the words name no piece, or no later step uses it, it is the next
 * step, so that nothing wet is touched.
 */
export function withDrying(steps: readonly Step[], { actions, pieceOf }: Course): Step[] {
  if (steps.every(({ drying }) => drying === undefined)) return [...steps]
  const piecesOf = (things: readonly Thing[]): Named[] =>
    things.flatMap(({ named }) => {
      const piece = pieceOf(named)
      return piece ? [piece] : []
    })
  return steps.map((step, i) => {
    if (!step.drying) return step
    const own = actions.filter((action) => stepOf(action) === step.number)
    const wet = new Set(own.flatMap(({ objects, onto }) => piecesOf([...objects, ...onto])))
    const uses = ({ objects, onto, says }: Action): boolean =>
      (says === 'several' && objects.length === 0) ||
      piecesOf([...objects, ...onto]).some((piece) => wet.has(piece))
    const later = actions.find((action) => stepOf(action) > step.number && uses(action))
    const before = (wet.size > 0 && later && stepOf(later)) || steps[i + 1]?.number
    const worked = own.filter(({ kind }) => kind === 'stick' || kind === 'write')
    const names = new Set(
      (worked.length > 0 ? worked : own).flatMap(({ objects }) => piecesOf(objects).map(({ name }) => name)),
    )
    return {
      ...step,
      drying: { minutes: step.drying.minutes, of: [...names], ...(before !== undefined && { before }) },
    }
  })
}
