import { fitInside, mustCover } from '../../length/grid.ts'
import { inches, type Length, larger, minus, part, plus, shorter, times, zero } from '../../length/length.ts'
import type { BuildInput, Limit } from '../style.ts'
import { isUsual } from './usual.ts'

export type SliderKey =
  | 'slot'
  | 'slot height'
  | 'bottom'
  | 'pad'
  | 'mover'
  | 'strip'
  | 'notch'
  | 'glue'
  | 'gap'
export type SliderInput = BuildInput<SliderKey>

/** Lower end of something of size `own` whose middle lies as near as the ruler allows to the middle of `from`..`to`. */
export const centred = (from: Length, to: Length, own: Length, grid: Length): Length =>
  fitInside(part(minus(plus(from, to), own), 2), grid)

/** From the free edge of the front to the slot. */
export const marginOf = ({ closed, lengths: { slot }, grid }: SliderInput): Length =>
  centred(zero, closed.width, slot, grid)

export const channelHeight = ({ strip, gap, glue }: SliderInput['lengths']): Length =>
  plus(strip, times(gap, 2), times(glue, 2))

/** A slot that nothing can move in, or whose moving piece or channel does not stay on the card. */
export function sliderLimits(input: SliderInput): Limit<SliderKey>[] {
  const { closed, lengths, grid, say } = input
  const { slot, pad, mover, notch, glue, strip, bottom } = lengths
  const high = lengths['slot height']
  const longest = minus(closed.width, times(plus(notch, glue), 2))
  const widest = plus(times(marginOf(input), 2), pad)
  const beside = part(larger(channelHeight(lengths), mover), 2)
  const [lowest, highest] = [
    mustCover(minus(beside, part(high, 2)), grid),
    fitInside(minus(closed.height, beside, part(high, 2)), grid),
  ]
  if (shorter(longest, plus(pad, grid)))
    return [
      {
        about: 'notch',
        message: `A notch of ${say(notch)}, glue of ${say(glue)} and a pad of ${say(pad)} leave nothing to move along on a card ${say(closed.width)} wide`,
        suggestion: 'Make the card wider, or the notch, the glue or the pad narrower',
      },
    ]
  const found: Limit<SliderKey>[] = []
  const unless = (fine: boolean, about: SliderKey, message: string, suggestion: string): void => {
    if (!fine) found.push({ about, message, suggestion })
  }
  unless(
    shorter(zero, pad),
    'pad',
    'Without a pad in the slot nothing moves the piece on the front',
    `Make the pad wider than nothing; ${isUsual(inches(1, 2), 'up', input)}`,
  )
  unless(
    shorter(pad, slot),
    'slot',
    `A slot of ${say(slot)} leaves no way for the moving piece: the pad in it is ${say(pad)} wide`,
    `Make the slot longer than ${say(pad)}; it moves by what is left`,
  )
  unless(
    !shorter(longest, slot),
    'slot',
    `A slot of ${say(slot)} leaves no room for the thumb notch on a front ${say(closed.width)} wide`,
    `Make the slot at most ${say(longest)}, or the card wider`,
  )
  unless(
    shorter(lengths.gap, high) && shorter(high, strip),
    'slot height',
    `A slot ${say(high)} high does not hold a pad with ${say(lengths.gap)} of play, or lets a strip of ${say(strip)} through`,
    `Make the slot higher than ${say(lengths.gap)} and lower than ${say(strip)}`,
  )
  unless(
    // A slot that is too long is told already; nothing that moves in it would do.
    shorter(longest, slot) || (shorter(larger(high, pad), mover) && !shorter(widest, mover)),
    'mover',
    `A moving piece of ${say(mover)} does not stay on the card at both ends of the slot, or falls through it`,
    `Make it more than ${say(larger(high, pad))} and at most ${say(widest)}, or the slot shorter`,
  )
  unless(
    !shorter(bottom, lowest) && !shorter(highest, bottom),
    'bottom',
    `A slot at ${say(bottom)} leaves no room for the channel and the moving piece on a card ${say(closed.height)} high`,
    shorter(highest, lowest)
      ? `Make the card at least ${say(plus(beside, beside))} high, or the strip and the moving piece smaller`
      : `Put it between ${say(lowest)} and ${say(highest)} above the lower edge`,
  )
  return found
}
