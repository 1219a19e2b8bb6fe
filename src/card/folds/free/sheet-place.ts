import { minus, zero } from '../../../length/length.ts'
import { boxesOf, movedStrip, type PlacedStrip, placeBank } from './bank-place.ts'
import { round } from './box.ts'
import { cross } from './crossing.ts'
import type { Measuring } from './lengths.ts'

/**
 * Lays all strips of a sheet out: the first ones and what lies beside them, then on the panels that they share the strips
 * that cross them. The sheet's lower left corner is at zero.
 *
 * @returns undefined, with a finding, when they do not fit each other.
 */
export function placeSheet({ reading, banks, lengths }: Measuring): PlacedStrip[] | undefined {
  const placed: PlacedStrip[] = []
  const left = [...banks]
  while (left.length > 0) {
    const known = boxesOf(placed)
    const next = left.findIndex((bank) =>
      bank.some(({ panels }) => panels.some(({ name }) => known.has(name))),
    )
    const [bank = []] = left.splice(Math.max(0, next), 1)
    const own = placeBank(reading, bank, lengths)
    const joined = own && (placed.length === 0 ? own : cross(reading, own, known))
    if (!joined) return undefined
    placed.push(...joined)
  }
  const { left: x, bottom: y } = round(placed.flatMap(({ boxes }) => boxes.map(([, box]) => box)))
  return placed.map((strip) => movedStrip(strip, 'width', minus(zero, x), minus(zero, y)))
}
