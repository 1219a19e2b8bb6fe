import type { Place } from '../length/finding.ts'
import { formatGrid, formatSize } from '../length/format.ts'
import { type Size, shorter } from '../length/length.ts'
import { type Reading, report } from './reading.ts'

/**
 * Whether something of a piece or a window is left on the ruler of this print. What is narrower than a mark may be put on
 * the mark at nothing, and what is worked out from a small card may come out below nothing; both are told.
 */
export function someLeft(reading: Reading, name: string, size: Size, place: Place): boolean {
  const { grid, unit } = reading
  if (!shorter(size.width, grid) && !shorter(size.height, grid)) return true
  report(
    reading,
    'impossible-size',
    place,
    `Nothing is left of \`${name}\`: on a ruler of ${formatGrid(grid)} it is ${formatSize(size, unit)}`,
    `Make it at least ${formatGrid(grid)} both ways, or the card larger`,
  )
  return false
}
