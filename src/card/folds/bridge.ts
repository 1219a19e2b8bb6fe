import { fitInside, mustCover } from '../../length/grid.ts'
import {
  inches,
  type Length,
  larger,
  minus,
  part,
  plus,
  same,
  shorter,
  times,
  zero,
} from '../../length/length.ts'
import { isUsual } from '../making/usual.ts'
import { upright } from '../strip.ts'
import type { BuildInput, FoldStyle, Limit } from '../style.ts'

/** A floor narrower than this cannot be scored and folded cleanly. Common practice, no source. */
const leastFloor = inches(1, 2)

/**
 * left tab · M · left leg · V · floor F · V · right leg · M · right tab.
 *
 * Shut, the left leg lies flat beside the floor with its tab beyond it, and the right leg lies on the floor. From the
 * left end the floor's far edge is tab + leg + F away, the right tab's end 2·tab + F, so W is the larger of the two:
 * F = W - leg - max(tab, 2·tab - leg).
 */
function floorOf({ closed, lengths: { leg, tab } }: BuildInput<'leg' | 'tab'>): Length {
  return minus(closed.width, leg, larger(tab, minus(times(tab, 2), leg)))
}

function limits(input: BuildInput<'leg' | 'tab'>): Limit<'leg' | 'tab'>[] {
  const { closed, grid, lengths, say } = input
  const { leg, tab } = lengths
  const missing = (['leg', 'tab'] as const).find((name) => same(lengths[name], zero))
  if (missing)
    return [
      {
        about: missing,
        message: `A bridge without a ${missing} has nothing to ${missing === 'leg' ? 'stand' : 'stick the spans'} on`,
        suggestion: `Make the ${missing} at least ${say(grid)}; ${isUsual(inches(1), 'nearest', input)}`,
      },
    ]
  const least = mustCover(leastFloor, grid)
  if (!shorter(floorOf(input), least)) return []
  // A tab longer than the leg decides by itself, and one as long as the leg follows it.
  const about = shorter(leg, tab) ? 'tab' : 'leg'
  const room = minus(closed.width, least)
  const longest = same(leg, tab) || about === 'tab' ? part(room, 2) : minus(room, tab)
  return [
    {
      about,
      message: `A ${about} of ${say(lengths[about])} leaves no floor on a card ${say(closed.width)} wide`,
      suggestion: `Make the ${about} at most ${say(fitInside(longest, grid))}, or the card wider`,
    },
  ]
}

export const bridge: FoldStyle<'leg' | 'tab'> = {
  name: 'bridge',
  summary: 'A floor between two legs that fold up, with strips of card spanning from tab to tab.',
  parameters: {
    leg: { help: 'height of the two legs: how deep the card stands', usual: '1 in', round: 'nearest' },
    tab: { help: 'width of the tabs that the spans are stuck on', usual: 'leg', round: 'nearest' },
  },
  panels: { 'left tab': 'face', 'left leg': 'face', floor: 'face', 'right leg': 'face', 'right tab': 'face' },
  limits,
  build(input) {
    const { leg, tab } = input.lengths
    const floor = floorOf(input)
    const base = upright(
      {
        stock: input.stock,
        panels: [
          { name: 'left tab', length: tab },
          { name: 'left leg', length: leg },
          { name: 'floor', length: floor },
          { name: 'right leg', length: leg },
          { name: 'right tab', length: tab },
        ],
        folds: ['mountain', 'valley', 'valley', 'mountain'],
        across: input.closed.height,
      },
      'floor',
      [['left leg', 'floor', 90]],
    )
    return { ...base, span: { from: 'left tab', to: 'right tab', width: plus(floor, times(tab, 2)) } }
  },
  starter: `fold: bridge
closed: 7 x 5 in
leg: 3/4 in
base: {stock: coloured card, weight: 300 gsm}
layers:
  backdrop:
    on: floor
    border: {sides: 1/16 in, ends: 0 in}
    stock: patterned paper
spans:
  strip: {height: 1 1/2 in, at: bottom, stock: white card}`,
}
