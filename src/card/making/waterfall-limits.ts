import { fitInside } from '../../length/grid.ts'
import { inches, type Length, minus, part, plus, shorter, smaller, times, zero } from '../../length/length.ts'
import type { BuildInput, Limit } from '../style.ts'
import { isUsual } from './usual.ts'

export type WaterfallKey = 'panel' | 'step' | 'grip' | 'glue' | 'gap'
export type WaterfallInput = BuildInput<WaterfallKey, 'panels'>

/** From the end of the tab, at the lower edge of the card, up to where the strip turns. */
export const turnOf = ({ lengths: { panel, step, grip }, counts: { panels } }: WaterfallInput): Length =>
  plus(grip, panel, times(step, panels - 1))

export const barLength = ({ panel, glue, gap }: WaterfallInput['lengths']): Length =>
  plus(panel, times(plus(glue, gap), 2))

/** A cascade that is none, or that is larger than the card. */
export function waterfallLimits(input: WaterfallInput): Limit<WaterfallKey>[] {
  const { closed, lengths, counts, grid, say } = input
  const { panel, step, grip } = lengths
  const [turn, bar] = [turnOf(input), barLength(lengths)]
  if (!shorter(zero, step))
    return [
      {
        about: 'step',
        message: 'Without a step between them the panels do not turn over one by one',
        suggestion: `Make the step longer than nothing; ${isUsual(inches(3, 4), 'nearest', input)}`,
      },
    ]
  if (shorter(step, panel) && !shorter(closed.height, turn) && !shorter(closed.width, bar)) return []
  const [high, wide] = [minus(turn, panel), minus(bar, panel)]
  const least = plus(step, grid)
  const most = fitInside(smaller(minus(closed.height, high), minus(closed.width, wide)), grid)
  const steps = smaller(
    fitInside(part(minus(closed.height, panel, grip), counts.panels - 1), grid),
    minus(panel, grid),
  )
  const card = `the card at least ${say(plus(least, wide))} wide and ${say(plus(least, high))} high`
  const message = `${counts.panels} panels of ${say(panel)} at steps of ${say(step)}, with a bar of ${say(bar)} and ${say(grip)} to pull at, do not make a cascade on a card ${say(closed.width)} wide and ${say(closed.height)} high: it would be ${say(turn)} high`
  if (!shorter(most, least))
    return [
      {
        about: 'panel',
        message,
        suggestion: shorter(step, panel)
          ? `Make the panel at most ${say(most)}, or take fewer`
          : `Make the panel at least ${say(least)} and at most ${say(most)}`,
      },
    ]
  return [
    {
      about: shorter(zero, steps) ? 'step' : 'panel',
      message,
      suggestion:
        shorter(zero, steps) && !shorter(closed.width, bar)
          ? `Make the step at most ${say(steps)}, or ${card}, or take fewer panels`
          : `Make ${card}, or take fewer panels`,
    },
  ]
}
