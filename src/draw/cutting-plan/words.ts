import { listOf } from '../../length/finding.ts'
import { formatLength, formatSize } from '../../length/format.ts'
import { groupBy } from '../../length/group-by.ts'
import type { Unit } from '../../length/length.ts'
import type { SheetPlan } from './sheet-plan.ts'

/** What a sighted reader takes from a cutting plan. */
export function planWords(plan: SheetPlan, unit: Unit): string {
  const pieces = groupBy(plan.placed, (piece) => `${piece.name}, ${formatSize(piece, unit)}`)
  const cuts = plan.cuts.map(
    ({ across: way, at }, i) =>
      `${i + 1} at ${formatLength(at, unit)} from the ${way === 'width' ? 'left' : 'lower'} edge`,
  )
  return `A sheet of ${plan.stock}, ${formatSize(plan.sheet, unit)}, with ${listOf([...pieces].map(([what, list]) => `${list.length} × ${what}`))}. ${cuts.length > 0 ? `Cuts in their order: ${listOf(cuts)}.` : 'It is used whole.'}`
}
