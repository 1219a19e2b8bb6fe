import { groupBy } from '../../length/group-by.ts'
import type { Wording } from '../../wording/wording.ts'
import type { SheetPlan } from './sheet-plan.ts'

/** What a sighted reader takes from a cutting plan. */
export function planWords(plan: SheetPlan, wording: Wording): string {
  const { say, list } = wording
  const pieces = groupBy(plan.placed, (piece) => `${wording.name(piece.name)}, ${wording.size(piece)}`)
  const cuts = plan.cuts.map(({ across, at }, i) =>
    say('figures.plan-cut', { number: i + 1, at: wording.length(at), across }),
  )
  return [
    say('figures.plan-sheet', {
      stock: wording.name(plan.stock),
      size: wording.size(plan.sheet),
      pieces: list([...pieces].map(([what, own]) => `${own.length} × ${what}`)),
    }),
    cuts.length > 0 ? say('figures.plan-cuts', { cuts: list(cuts) }) : say('figures.plan-whole'),
  ].join(' ')
}
