import type { Wording } from '../../wording/wording.ts'
import type { Fee } from './price-wish.ts'

/** What stands for a fee of which the class file says the amount alone. */
export const feesWithoutName = { fees: 'for the class', each: 'for each person' } as const

/** What a fee is for: in the teacher's own words where there are any. */
export function feeWords({ name }: Fee, { say }: Wording): string {
  if (name === feesWithoutName.fees) return say('class.fee', { whose: 'class' })
  return name === feesWithoutName.each ? say('class.fee', { whose: 'person' }) : name
}
