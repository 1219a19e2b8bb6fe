import { fitInside, mustCover } from '../../length/grid.ts'
import { inches, minus, part, shorter, times } from '../../length/length.ts'
import type { BuildInput, Limit } from '../style.ts'

export type BoxCardKey = 'depth' | 'flap' | 'tab' | 'bar'
export type BoxCardInput = BuildInput<BoxCardKey, 'bars'>

/** A tab of a bar narrower than this does not hold. Common practice, no source. */
const leastTab = inches(1, 4)

/** What cannot be made of the lengths of a box card. */
export function boxCardLimits(input: BoxCardInput): Limit<BoxCardKey>[] {
  const { closed, counts, lengths, grid, say } = input
  const { depth, flap, tab, bar } = lengths
  const none = (['depth', 'flap', 'tab', 'bar'] as const).find((key) => shorter(lengths[key], grid))
  const deepest = minus(closed.width, tab)
  const shallowest = times(mustCover(leastTab, grid), counts.bars + 1)
  const wall = minus(closed.height, flap)
  const limit = (about: BoxCardKey, message: string, suggestion: string) => [{ about, message, suggestion }]
  if (none)
    return limit(
      none,
      `A box card needs a ${none}`,
      `Make the ${none} at least ${say(none === 'depth' ? shallowest : grid)}`,
    )
  if (!shorter(tab, closed.width))
    return limit(
      'tab',
      `A tab of ${say(tab)} is as wide as the whole card`,
      `Make the tab at most ${say(fitInside(part(closed.width, 2), grid))}`,
    )
  if (shorter(deepest, depth))
    return limit(
      'depth',
      `A box ${say(depth)} deep leaves its front ${say(minus(closed.width, depth))}, less than the tab of ${say(tab)}`,
      `Make the depth at most ${say(deepest)}`,
    )
  if (counts.bars > 0 && shorter(depth, shallowest))
    return limit(
      'depth',
      `A box ${say(depth)} deep has no room for the tabs of ${counts.bars === 1 ? 'a bar' : `${counts.bars} bars`}`,
      `Make the depth at least ${say(shallowest)}, or have fewer bars`,
    )
  if (!shorter(flap, closed.height))
    return limit(
      'flap',
      `A flap of ${say(flap)} leaves no walls under it`,
      `Make the flap at most ${say(shorter(bar, closed.height) ? minus(closed.height, bar) : fitInside(part(closed.height, 2), grid))}`,
    )
  if (counts.bars > 0 && shorter(wall, bar))
    return limit(
      'bar',
      `A bar ${say(bar)} high is higher than the sides, which are ${say(wall)}`,
      `Make the bar at most ${say(wall)}`,
    )
  return []
}
