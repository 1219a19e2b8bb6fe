import { fitInside, mustCover } from '../../length/grid.ts'
import { inches, larger, minus, part, plus, same, shorter, smaller, times } from '../../length/length.ts'
import type { BuildInput, Limit } from '../style.ts'

export type TunnelLengths = 'pleat' | 'rim' | 'creep'

/** What a rim is wider than the pleats that it hides, and the least that does not tear. Common practice, no source. */
const rimBeyondPleat = inches(1, 8)

/** Frames that are pinched in the sides, sides that show in the windows, and windows that are not there. */
export function tunnelLimits(input: BuildInput<TunnelLengths>): Limit<TunnelLengths>[] {
  const { closed, lengths, stock, grid, say } = input
  const { pleat, rim, creep } = lengths
  const refuse = (about: TunnelLengths, why: string, cure: string): Limit<TunnelLengths>[] => [
    {
      about,
      message: `A ${about} of ${say(lengths[about])} ${why}`,
      suggestion: `Make the ${about} ${cure}`,
    },
  ]
  const thick = mustCover(stock.caliper, grid)
  if (shorter(creep, thick))
    return refuse('creep', 'pinches the frames in the folds of the sides', `at least ${say(thick)}`)
  const narrowest = plus(thick, grid)
  if (shorter(pleat, narrowest))
    return refuse('pleat', 'leaves nothing to glue', `at least ${say(narrowest)}`)
  const most = minus(pleat, grid)
  if (shorter(most, creep))
    return refuse('creep', 'leaves nothing of the pleats to glue', `at most ${say(most)}`)

  const room = smaller(minus(closed.width, times(creep, 2)), closed.height)
  const widest = fitInside(part(minus(room, grid), 2), grid)
  const hidden = larger(minus(pleat, creep), mustCover(rimBeyondPleat, grid))
  // A rim that is the pleat and a little more follows it.
  const follows = same(rim, mustCover(plus(pleat, rimBeyondPleat), grid))
  if (shorter(widest, rim))
    return follows
      ? refuse('pleat', 'leaves no windows', `at most ${say(fitInside(minus(widest, rimBeyondPleat), grid))}`)
      : refuse('rim', 'leaves no windows', `at most ${say(widest)}`)
  if (!shorter(rim, hidden)) return []
  return shorter(widest, hidden)
    ? refuse('pleat', 'shows in the windows', `at most ${say(plus(rim, creep))}`)
    : refuse('rim', 'tears, or shows the sides in the windows', `at least ${say(hidden)}`)
}
