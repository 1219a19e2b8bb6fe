import { fitInside, mustCover } from '../../length/grid.ts'
import { inches, type Length, part, type Size, shorter, smaller, times, zero } from '../../length/length.ts'
import { bottomFlap, type Diagonal, type Need, widestSeam } from './diagonal.ts'

/** What is wrong with the lengths of an envelope, and the key that would cure it. */
export interface Misfit {
  readonly rule: string
  readonly key: 'make' | 'clearance' | 'seam' | 'flap'
  readonly severity: 'error' | 'warning'
  readonly message: string
  readonly suggestion: string
}

type Say = (x: Length) => string

/** What a hand can glue. Common practice, no source. */
const leastLap = inches(1, 4)

/** The card must go in: a gap is never less than nothing. */
export function clearanceMisfit(clearance: Length): Misfit[] {
  if (!shorter(clearance, zero)) return []
  return [
    {
      rule: 'envelope-clearance',
      key: 'clearance',
      severity: 'error',
      message: 'A clearance below nothing makes the envelope smaller than the card',
      suggestion: 'Write `clearance: 1/4 in` or `clearance: 6 mm`',
    },
  ]
}

/**
 * The flaps must meet and lap, or the envelope has gaps at its corners.
 *
 * @param lap how far one flap lies over the next: the flap of a side seam; twice the seam of a diagonal one, whose flaps
 * each stand out by the seam beyond the line at 45° on which they would just meet.
 */
export function lapMisfit(key: 'seam' | 'flap', lap: Length, grid: Length, say: Say): Misfit[] {
  if (!shorter(lap, leastLap)) return []
  const least = mustCover(key === 'seam' ? part(leastLap, 2) : leastLap, grid)
  const none = !shorter(zero, lap)
  return [
    {
      rule: 'envelope-flaps',
      key,
      severity: none ? 'error' : 'warning',
      message: none
        ? 'The flaps of the envelope would not lap each other, so they could not be glued'
        : `The flaps of the envelope lap each other by only ${say(lap)}, too little to glue`,
      suggestion: `Write \`${key}: ${say(least)}\` or more`,
    },
  ]
}

/**
 * Of a side seam: the two side flaps must not pass each other (2·f ≤ w), and the top flap, which is two flaps deep, must
 * not pass the lower edge (2·f ≤ h).
 */
export function wideFlapMisfit(inside: Size, flap: Length, grid: Length, say: Say): Misfit[] {
  const { width, height } = inside
  const double = times(flap, 2)
  if (!shorter(smaller(width, height), double)) return []
  const why = shorter(height, double)
    ? `the top flap would reach down ${say(double)} and pass the lower edge, as the inside is only ${say(height)} high`
    : `the side flaps would pass each other, as the inside is only ${say(width)} wide`
  return [
    {
      rule: 'envelope-flaps',
      key: 'flap',
      severity: 'error',
      message: `With flaps of ${say(flap)} ${why}`,
      suggestion: `Write \`flap: ${say(fitInside(part(smaller(width, height), 2), grid))}\` or less`,
    },
  ]
}

/**
 * A card that is deeper than half its shorter side is a box: an envelope cannot be folded round it. Common practice, no
 * source.
 */
export function depthMisfit(card: Size, thickness: Length, grid: Length, say: Say): Misfit[] {
  if (!tooDeep(card, thickness)) return []
  const short = smaller(card.width, card.height)
  return [
    {
      rule: 'envelope-depth',
      key: 'make',
      severity: 'error',
      message: `Shut, this card is ${say(mustCover(thickness, grid))} deep and only ${say(short)} across, so an envelope cannot be folded round it`,
      suggestion: 'Take `envelope` out of the card block, and send the card in a box',
    },
  ]
}

/** Whether a shut card is a box rather than something flat. */
export const tooDeep = ({ width, height }: Size, thickness: Length): boolean =>
  shorter(smaller(width, height), times(thickness, 2))

/** Why a card gets a side seam though a diagonal envelope is wanted: its bottom flap passes the opposite edge. */
export function longCard(need: Need, sheet: Diagonal, say: Say): Misfit {
  const { width, height } = sheet.inside
  const narrower = widestSeam(need, sheet.seam, part(leastLap, 2))
  const why = narrower
    ? `With a seam of ${say(sheet.seam)}`
    : 'This card is too long and thin for a diagonal envelope:'
  return {
    rule: 'long-card',
    key: 'make',
    severity: 'warning',
    message: `${why} its bottom flap would reach up ${say(bottomFlap(sheet, need.grid).reach)} and pass the opposite edge, as the inside is only ${say(smaller(width, height))} high; a side seam is used`,
    suggestion: narrower
      ? `Write \`seam: ${say(narrower)}\` for a diagonal envelope, or \`make: side seam\``
      : 'Write `make: side seam`',
  }
}
