import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, plus, type Size, times, zero } from '../../length/length.ts'
import type { Envelope } from '../card.ts'
import { point } from '../strip.ts'
import type { Stock, Structure } from '../structure.ts'
import { pouch } from './pouch.ts'

/**
 * One rectangle: the front with a flap on either side, the back below it, which folds up and is stuck on the side
 * flaps, and the top flap. The back is lower than the front by one flap and the top flap laps it by another:
 * sheet (w + 2·f) × (2·h + f). Common practice, no source.
 *
 * @param inside on the ruler.
 */
export function sideSeam(inside: Size, flap: Length, grid: Length, stock: Stock): Envelope {
  const { width, height } = inside
  const back = minus(height, flap)
  const sheet = { width: plus(width, times(flap, 2)), height: plus(times(height, 2), flap) }
  return {
    make: 'side seam',
    stock,
    sheet,
    score: flap,
    inside,
    outside: inside,
    scores: [
      { at: flap, along: 'width' },
      { at: plus(flap, width), along: 'width' },
      { at: back, along: 'height' },
      { at: plus(back, height), along: 'height' },
    ],
    structure: sideSeamSheet(inside, sheet, flap, grid, stock),
    folding: ['left flap', 'right flap', 'back', 'top flap'],
  }
}

/**
 * The sheet with its four corners cut away. A side flap is shorter at its outer edge by a third of its width at each end,
 * down to the ruler, so that it does not catch in the folds. Common practice, no source.
 */
function sideSeamSheet(inside: Size, sheet: Size, flap: Length, grid: Length, stock: Stock): Structure {
  const taper = fitInside(part(flap, 3), grid)
  const [left, right] = [flap, plus(flap, inside.width)]
  const low = minus(inside.height, flap)
  const high = plus(low, inside.height)
  const [from, to] = [plus(low, taper), minus(high, taper)]
  return pouch({
    stock,
    sheet,
    corners: [point(left, low), point(right, low), point(right, high), point(left, high)],
    flaps: [
      { name: 'back', beyond: [point(left, zero), point(right, zero)] },
      { name: 'right flap', beyond: [point(sheet.width, from), point(sheet.width, to)] },
      { name: 'top flap', beyond: [point(right, sheet.height), point(left, sheet.height)] },
      { name: 'left flap', beyond: [point(zero, to), point(zero, from)] },
    ],
  })
}
