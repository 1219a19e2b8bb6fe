import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, shorter, times } from '../../length/length.ts'
import type { BuildInput, Chosen, Limit } from '../style.ts'
import { closedBySpine } from './on-top.ts'
import { spineOf } from './spine.ts'

/** Two doors that hang on opposite edges: the one by the spine, and the other. */
export const doorsOf = (chosen: Pick<Chosen, 'choices'>): [string, string] =>
  spineOf(chosen) === 'top' ? ['upper door', 'lower door'] : ['left door', 'right door']

/** Each of two doors over a panel, with a gap between them that takes what does not halve on the ruler. */
export const doorWidth = (panel: Length, gap: Length, grid: Length): Length =>
  fitInside(part(minus(panel, gap), 2), grid)

/** A gap between the doors that leaves nothing of them. */
export function partLimits(input: BuildInput<'part'>): Limit<'part'>[] {
  const widest = minus(closedBySpine(input).width, times(input.grid, 2))
  if (!shorter(widest, input.lengths.part)) return []
  return [
    {
      about: 'part',
      message: `A part of ${input.say(input.lengths.part)} between the doors leaves nothing of them`,
      suggestion: `Make the part at most ${input.say(widest)}`,
    },
  ]
}
