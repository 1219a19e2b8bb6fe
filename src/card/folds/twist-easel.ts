import { plus, same, shorter, smaller, zero } from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { point, rectangle, sheet } from '../strip.ts'
import type { Plate } from '../structure.ts'
import type { FoldStyle } from '../style.ts'

/**
 * prop p · V · floor W, both H high, with p the smaller of W and H. A diagonal mountain from the lower end of the spine
 * cuts the prop at 45°: below it is the foot, an isosceles triangle with two sides p. A front W × H is stuck on the foot.
 *
 * Shut, the prop lies face down on the floor and the foot is folded back over it. Two reflections, about the diagonal
 * and about the spine, are a quarter turn about the corner where they meet, so the front is stuck on turned by as much
 * the other way: it covers the floor, its lower edge at right angles to the spine.
 *
 * Standing, that edge has come to rest on the floor at an angle ψ to the spine. It, the diagonal and the spine meet in
 * the corner, and both others stand at 45° to the diagonal: an isosceles spherical triangle with base ψ. Napier's rules
 * give its base angles: front and prop both lean over the floor at θ with cos θ = tan(ψ/2) / tan 45°. The stop is where
 * the edge's line meets the far edge of the floor, so tan ψ = W/stop: with stop = 3/4 W the front leans at 60°.
 */
export const twistEasel: FoldStyle<'stop'> = {
  name: 'twist easel',
  summary:
    'A card that opens like a book and whose front then stands on its lower edge, twisted across the floor.',
  parameters: {
    stop: {
      help: 'where the front comes to rest: its lower edge lies from the lower end of the spine to this height on the right edge of the floor',
      usual: 'closed.height * 3 / 4',
      round: 'nearest',
    },
  },
  panels: { floor: 'face', prop: 'back', foot: 'face', front: 'face' },
  pieces: ['front'],
  limits({ closed: { height }, lengths: { stop }, grid, say }) {
    if (shorter(stop, grid))
      return [
        {
          about: 'stop',
          message: 'With the stop at nothing the front lies flat on the floor',
          suggestion: `Make the stop at least ${say(grid)}; three quarters of the height is usual`,
        },
      ]
    return shorter(height, stop)
      ? [
          {
            about: 'stop',
            message: `A stop at ${say(stop)} is not on a floor ${say(height)} high`,
            suggestion: `Make the stop at most ${say(height)}; three quarters of that is usual`,
          },
        ]
      : []
  },
  build({ closed, lengths: { stop }, stock }) {
    const { width, height } = closed
    const side = smaller(width, height)
    const [corner, top, end] = [point(side, zero), point(side, height), point(zero, side)]
    const plate = (name: string, outline: Plate['outline']): Plate => ({
      name,
      piece: 'base',
      outline,
      holes: [],
    })
    const front = sheet('front', stock, closed)
    const size = { width: plus(side, width), height }
    return {
      pieces: [{ name: 'base', kind: 'base', stock, count: 1, size, cuts: [] }, front.piece],
      plates: [
        plate('floor', rectangle(closed, corner)),
        plate('prop', [corner, top, point(zero, height), ...(same(side, height) ? [] : [end])]),
        plate('foot', [point(zero, zero), corner, end]),
        front.plate,
      ],
      hinges: [
        { between: ['prop', 'floor'], line: { from: corner, to: top }, fold: 'valley' },
        { between: ['foot', 'prop'], line: { from: end, to: corner }, fold: 'mountain' },
      ],
      bonds: [glued('front', 'foot', corner, { turn: 90 })],
      stops: [
        {
          plate: 'front',
          edge: { from: point(zero, zero), to: point(width, zero) },
          onto: 'floor',
          line: { from: corner, to: point(size.width, stop) },
        },
      ],
      display: { angles: [], plate: 'floor', rests: 'flat', turn: -60 },
    }
  },
  starter: `fold: twist easel
closed: 5 x 5 in
base: {stock: white card, weight: 300 gsm}
layers:
  front mat:
    on: front
    border: 1/8 in
    stock: patterned paper
  stop strip:
    on: floor
    border: {left: closed.width * 3 / 4, right: 1/4 in, top: closed.height - stop * 3 / 4, bottom: stop * 3 / 4 - 1/2 in}
    raise: 2 mm
    stock: white card`,
}
