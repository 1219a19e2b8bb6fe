import { type Length, minus, plus, zero } from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { centred, channelHeight, marginOf, type SliderKey, sliderLimits } from '../making/slider-limits.ts'
import { line, point, rectangle, sheet } from '../strip.ts'
import type { Plate, Polygon } from '../structure.ts'
import type { FoldStyle } from '../style.ts'
import { side } from './side.ts'

/** Cuts a slot into a panel, and a notch into its left edge between two heights. */
function notched(panel: Plate, slot: Polygon, notch: Length, from: Length, to: Length) {
  const [origin = point(zero, zero), ...corners] = panel.outline
  const edge = [
    line(zero, to, notch, to),
    line(notch, to, notch, from),
    line(notch, from, zero, from),
  ] as const
  const inner = [edge[0].from, edge[1].from, edge[2].from, edge[2].to]
  return { plate: { ...panel, outline: [origin, ...corners, ...inner], holes: [slot] }, cuts: edge }
}

/**
 * A side fold, front W · V · back W, whose front has a slot in the middle of its width; what does not halve on the ruler
 * is beside the spine. Behind the front lies a pull strip; a pad of the same card
 * on it fills the thickness of the slot, and the moving piece is stuck on the pad, so that it slides on the front. A
 * channel, stuck on above and below the strip, holds it to the front.
 *
 * Shut, the pad is at the end of the slot next to the spine. The strip reaches from there to the free edge of the front
 * and no farther, so that nothing sticks out; a notch in that edge bares its end for the thumb. The pad stops at the
 * other end of the slot: the travel is slot - pad. Its middle runs from pad/2 inside one end of the slot to pad/2
 * inside the other, so a moving piece of side m stays on the card if m/2 is at most pad/2 and the margin beside the slot.
 * The channel ends where the strip still reaches when it is pulled out: at the pad, at the far end of the slot.
 */
export const slider: FoldStyle<SliderKey> = {
  name: 'slider',
  summary:
    'A piece on the front that moves along a slot, as far as the slot is longer than its pad, when a strip is pulled.',
  remainder: 'the side of the spine, beside the slot',
  parameters: {
    slot: { help: 'length of the slot in the front', usual: 'closed.width - 2 in', round: 'down' },
    'slot height': { help: 'height of the slot', usual: '1/4 in', round: 'up' },
    bottom: {
      help: 'from the lower edge of the card up to the slot',
      usual: 'closed.height / 3',
      round: 'nearest',
    },
    pad: { help: 'width of the pad that goes through the slot', usual: '1/2 in', round: 'up' },
    mover: { help: 'side of the square piece that moves', usual: '1 1/2 in', round: 'down' },
    strip: { help: 'height of the pull strip behind the front', usual: '1 in', round: 'nearest' },
    notch: { help: 'depth of the thumb notch, where the strip is pulled', usual: '3/8 in', round: 'up' },
    glue: {
      help: 'what is stuck down of the channel, above and below the strip',
      usual: '3/8 in',
      round: 'up',
    },
    gap: { help: 'play of the strip and the pad', usual: '1/16 in', round: 'up' },
  },
  panels: { front: 'back', back: 'face', mover: 'face' },
  pieces: ['strip', 'pad', 'mover', 'channel'],
  limits: sliderLimits,
  build(input) {
    const { closed, lengths, stock, grid } = input
    const { slot, bottom, pad, mover, notch, gap } = lengths
    const high = lengths['slot height']
    const left = marginOf(input)
    const top = plus(bottom, high)
    const beside = (own: Length) => centred(bottom, top, own, grid)
    const stripBottom = beside(lengths.strip)
    const padHeight = minus(high, gap)
    const base = side.build({ ...input, lengths: {}, counts: {}, choices: { spine: 'left' } })
    const front = notched(
      { name: 'front', piece: 'base', outline: rectangle(closed), holes: [] },
      rectangle({ width: slot, height: high }, point(left, bottom)),
      notch,
      stripBottom,
      plus(stripBottom, lengths.strip),
    )
    const pieces = [
      sheet('strip', stock, { width: plus(left, slot), height: lengths.strip }),
      sheet('pad', stock, { width: pad, height: padHeight }),
      sheet('mover', stock, { width: mover, height: mover }),
      sheet('channel', stock, { width: minus(plus(left, pad), notch), height: channelHeight(lengths) }),
    ]
    const behind = minus(beside(mover), beside(padHeight))
    return {
      ...base,
      pieces: [
        ...base.pieces.map((piece) => ({ ...piece, cuts: front.cuts })),
        ...pieces.map((p) => p.piece),
      ],
      plates: [
        front.plate,
        ...base.plates.filter(({ name }) => name !== 'front'),
        ...pieces.map((p) => p.plate),
      ],
      bonds: [
        glued('strip', 'front', point(zero, stripBottom), { slide: point(minus(pad, slot), zero) }),
        // Turned over, the pad's left is on the right.
        glued('pad', 'strip', point(plus(left, slot), minus(beside(padHeight), stripBottom)), {
          side: 'back',
          over: true,
        }),
        glued('mover', 'pad', point(centred(zero, pad, mover, grid), behind)),
        glued('channel', 'front', point(notch, beside(channelHeight(lengths)))),
      ],
    }
  },
  starter: `fold: slider
closed: 7 x 5 in
base: {stock: white card, weight: 300 gsm}
layers:
  sky:
    on: front
    border: {left: 1/8 in, right: 1/2 in, top: 1/8 in, bottom: bottom + 1/2 in}
    stock: pale blue paper
  boat:
    on: mover
    border: 0 in
    stock: patterned paper`,
}
