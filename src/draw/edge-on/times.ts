import type { Cut } from './section.ts'

/** Times by which thickness may be exaggerated: numbers that are easily said. */
const steps = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100] as const
/** The thinnest sheet is drawn no thinner, the stoutest and the whole no thicker if that can be. In mm on paper. */
const [thin, stout, usualHeight, mostHeight] = [0.8, 2, 13, 30] as const

/** By how much thickness is exaggerated, so that each layer is seen and the whole is not a block. @param along mm on paper for one mm. */
export function timesFor({ bars, columns }: Pick<Cut, 'bars' | 'columns'>, along: number): number {
  const calipers = bars.map(({ caliper }) => caliper).filter((caliper) => caliper > 0)
  const whole = Math.max(...columns.map(({ thickness }) => thickness))
  const usual = Math.min(usualHeight / whole, stout / Math.max(...calipers))
  const wanted = Math.min(Math.max(usual, thin / Math.min(...calipers)), mostHeight / whole) / along
  return timesNear(wanted)
}

/** The nearest of the numbers that are easily said. */
export const timesNear = (wanted: number): number =>
  steps.reduce<number>((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a), 1)
