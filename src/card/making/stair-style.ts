import { type Length, minus, plus, shorter, times, zero } from '../../length/length.ts'
import { entriesOf } from '../chosen.ts'
import type { BuildInput, FoldStyle } from '../style.ts'
import { bySpine, closedBySpine } from './on-top.ts'
import { slitCard } from './slits.ts'
import { chosenBefore, sidesOf, spineChoice, spineOf } from './spine.ts'
import {
  type StairLength,
  stairCount,
  stairCreases,
  stairLimits,
  stairPanels,
  stairParameters,
  stairs,
} from './stairs.ts'

/** What tells one card with a band of stairs from another. */
export interface StairCard extends Pick<FoldStyle, 'name' | 'summary' | 'remainder' | 'starter'> {
  /** How many plain bands there are beside the one that steps. */
  readonly plain: 1 | 2
  /** Where the band that steps begins, when the plain ones together have this width. */
  begin(plain: Length, grid: Length): Length
}

type Style = FoldStyle<StairLength | 'band', 'steps', 'spine'>

/** A card with a front, a back and one band that goes down from one to the other in steps. */
export function stairStyle(card: StairCard): FoldStyle {
  const { name, summary, remainder, starter } = card
  const styleOf = (steps: number, spine: 'left' | 'top'): Style => ({
    name,
    summary,
    ...(remainder !== undefined && { remainder }),
    starter,
    parameters: {
      ...stairParameters(steps, spine),
      band: { help: 'width of the band that steps', usual: `${sidesOf(spine).along} / 2`, round: 'nearest' },
    },
    counts: { steps: stairCount },
    choices: { spine: spineChoice },
    panels: stairPanels(steps),
    read(reading, fields) {
      const chosen = chosenBefore(reading, fields, usual)
      const style = styleOf(chosen.counts.steps ?? steps, spineOf(chosen)) as unknown as FoldStyle
      return { style, entries: entriesOf(style, fields) }
    },
    limits: (input) => bandLimits(card, input) ?? stairLimits(input),
    build: (input) =>
      bySpine(input, (panel) => {
        const { lengths, counts, grid, stock } = input
        const from = card.begin(minus(panel.height, lengths.band), grid)
        const band = stairs(lengths, counts.steps, from, plus(from, lengths.band))
        return slitCard({ stock, panel }, [band], stairCreases(counts.steps))
      }),
  })
  const usual = styleOf(stairCount.usual, 'left') as unknown as FoldStyle
  return usual
}

function bandLimits({ plain }: StairCard, input: BuildInput<'band' | StairLength, 'steps', 'spine'>) {
  const { lengths, grid, say } = input
  const most = minus(closedBySpine(input).height, times(grid, plain))
  if (shorter(zero, lengths.band) && !shorter(most, lengths.band)) return undefined
  const about = 'band' as const
  return [
    {
      about,
      message: `A band of ${say(lengths.band)} leaves nothing ${shorter(zero, lengths.band) ? 'beside it' : 'to step'}`,
      suggestion: `Make the band at most ${say(most)}; half of the spine is usual`,
    },
  ]
}
