import type { Mark } from './mark.ts'

const scales = new WeakMap<readonly Mark[], number>()

/** Notes at which scale marks are drawn: mm on paper for one mm of the card. */
export function withScale(marks: Mark[], scale: number): Mark[] {
  scales.set(marks, scale)
  return marks
}

/** The scale of marks that were fitted into a room; none of others. */
export const scaleOf = (marks: readonly Mark[]): number | undefined => scales.get(marks)
