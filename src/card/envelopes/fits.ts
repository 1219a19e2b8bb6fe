import { type Length, minus, plus, type Size, shorter, times, zero } from '../../length/length.ts'
import { tooDeep } from './checks.ts'
import { type Series, type StandardEnvelope, standardEnvelopes } from './standard.ts'

/** A standard envelope that takes a card. */
export interface Fit {
  readonly envelope: StandardEnvelope
  /** What the envelope's own size leaves over the card's, the shorter side first, without allowance for seams. */
  readonly room: Size
  /** Lists of sizes disagree on whether it goes in, so it is tight at best. */
  readonly tight: boolean
}

/**
 * The standard envelopes that take a shut card, the smallest first. Published inserts are for flat cards: of the room
 * between the card and the envelope's edges its thickness takes one part, and as much must stay free to put it in.
 * Common practice, no source.
 *
 * @param thickness of the shut card. Something deeper than half its shorter side goes into none.
 */
export function standardFits(card: Size, thickness: Length): Fit[] {
  return standardEnvelopes.flatMap((envelope): Fit[] => {
    const fit = fitIn(envelope, card, thickness)
    return fit ? [{ envelope, ...fit }] : []
  })
}

/** How a shut card goes into one envelope, by the same rule; undefined when it does not. */
export function fitIn(
  { size, holds, atMost = holds }: Pick<StandardEnvelope, 'size' | 'holds' | 'atMost'>,
  card: Size,
  thickness: Length,
): Omit<Fit, 'envelope'> | undefined {
  if (tooDeep(card, thickness)) return undefined
  const [width, height] = shorter(card.height, card.width)
    ? [card.height, card.width]
    : [card.width, card.height]
  const within = (most: Size, more: Length): boolean =>
    !shorter(most.width, plus(width, more)) && !shorter(most.height, plus(height, more))
  if (!within(atMost, zero) || !within(size, times(thickness, 2))) return undefined
  const room = { width: minus(size.width, width), height: minus(size.height, height) }
  return { room, tight: !within(holds, zero) }
}

/** The smallest fits of a series: one, and before it any smaller that are tight. */
export function snuggest(fits: readonly Fit[], series: Series): Fit[] {
  const own = fits.filter(({ envelope }) => envelope.series === series)
  const easy = own.findIndex(({ tight }) => !tight)
  return easy < 0 ? own : own.slice(0, easy + 1)
}
