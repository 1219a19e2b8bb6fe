import { fitInside, mustCover } from '../../length/grid.ts'
import { inches, type Length, minus, part, plus, same, shorter, smaller, times } from '../../length/length.ts'
import type { BuildInput, Limit } from '../style.ts'
import { closedBySpine } from './on-top.ts'

/** The lengths of a card with a panel on stilts. */
export type StiltLengths = 'stilt' | 'tab' | 'border'

/** The least between a tab and the spine. Common practice, no source. */
const leastSetback = inches(1, 16)

/** How long the raised panel is: opened square, it is a stilt and the border away from both sides of the back. */
export const raisedLength = (width: Length, { stilt, border }: Record<StiltLengths, Length>): Length =>
  minus(width, times(plus(stilt, border), 2))

/** A panel that is too short for its stilts, and tabs that reach the spine or each other. */
export function stiltLimits(input: BuildInput<StiltLengths>): Limit<StiltLengths>[] {
  const { closed, lengths, grid, say } = input
  const { stilt, tab, border } = lengths
  const refuse = (about: StiltLengths, why: string, cure: string): Limit<StiltLengths>[] => [
    {
      about,
      message: `A ${about} of ${say(lengths[about])} ${why}`,
      suggestion: `Make the ${about} ${cure}`,
    },
  ]
  const widest = fitInside(part(minus(smaller(closed.width, closed.height), grid), 4), grid)
  if (shorter(widest, border))
    return refuse('border', 'leaves no room for the panel and its stilts', `at most ${say(widest)}`)
  const setback = mustCover(leastSetback, grid)
  const lowest = plus(setback, grid)
  if (shorter(stilt, lowest)) return refuse('stilt', 'is too low to be glued', `at least ${say(lowest)}`)
  if (shorter(tab, grid)) return refuse('tab', 'cannot be glued', `at least ${say(grid)}`)
  const { width } = closedBySpine(input)
  const length = raisedLength(width, lengths)
  const highest = highestStilt(minus(width, times(border, 2), grid), lengths, grid)
  if (shorter(length, plus(times(tab, 3), grid)) && !shorter(highest, plus(tab, setback)))
    return refuse('stilt', 'leaves the raised panel too short for two of them', `at most ${say(highest)}`)
  const broadest = smaller(minus(stilt, setback), fitInside(part(minus(length, grid), 3), grid))
  if (!shorter(broadest, tab)) return []
  if (shorter(broadest, grid))
    return refuse('stilt', `is too high for a card ${say(width)} wide`, 'shorter, or the card wider')
  return refuse('tab', 'reaches the spine or another tab', `at most ${say(broadest)}`)
}

/** The longest stilts of which the panel takes three tabs, in `room` for two stilts and the panel. */
function highestStilt(room: Length, { stilt, tab }: Record<StiltLengths, Length>, grid: Length): Length {
  // A tab of half a stilt follows it: 2 stilts and 3 tabs are 7/2 of it.
  const follows = same(tab, fitInside(part(stilt, 2), grid))
  return fitInside(follows ? part(times(room, 2), 7) : part(minus(room, times(tab, 3)), 2), grid)
}
