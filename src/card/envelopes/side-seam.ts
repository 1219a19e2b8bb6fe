import { type Length, minus, plus, type Size, times } from '../../length/length.ts'
import type { Envelope } from '../card.ts'

/**
 * One rectangle: the front with a flap on either side, the back below it, which folds up and is stuck on the side
 * flaps, and the top flap. The back is lower than the front by one flap and the top flap laps it by another:
 * sheet (w + 2·f) × (2·h + f). Common practice, no source.
 */
export function sideSeam(inside: Size, flap: Length): Pick<Envelope, 'sheet' | 'score' | 'scores'> {
  const { width, height } = inside
  const back = minus(height, flap)
  return {
    sheet: { width: plus(width, times(flap, 2)), height: plus(times(height, 2), flap) },
    score: flap,
    scores: [
      { at: flap, along: 'width' },
      { at: plus(flap, width), along: 'width' },
      { at: back, along: 'height' },
      { at: plus(back, height), along: 'height' },
    ],
  }
}
