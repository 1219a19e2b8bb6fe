import { share } from '../../length/grid.ts'
import { type Length, minus, shorter, times, zero } from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { point, sheet, strip } from '../strip.ts'
import type { FoldStyle } from '../style.ts'

/**
 * Upwards: floor H · V · prop H/2 · M · foot H/2, and a front panel W × H stuck on the foot. What does not halve on the
 * ruler goes to the prop, so that the foot stays inside.
 *
 * Shut, the prop lies face down on the upper half of the floor, the foot folds back up over it, and the upper half of
 * the front is stuck on the foot, so that the front covers the floor. Standing, the prop rises from the spine to the
 * middle of the front, whose lower edge comes down on the stop, at a distance s from the spine: prop, lower half of the
 * front and floor are an isosceles triangle with sides H/2, so the front leans over the floor at θ with cos θ = s/H.
 */
export const easel: FoldStyle<'stop'> = {
  name: 'easel',
  summary: 'A card whose front is propped up and leans back, held by a stop on the floor.',
  remainder: 'the prop, which is then a mark longer than the foot',
  parameters: {
    stop: {
      help: 'distance from the spine to the stop that the front rests against',
      usual: 'closed.height / 2',
      round: 'nearest',
    },
  },
  panels: { floor: 'face', prop: 'back', foot: 'face', front: 'face' },
  pieces: ['front'],
  limits: ({ closed, lengths, say }) =>
    shorter(zero, lengths.stop) && shorter(lengths.stop, closed.height)
      ? []
      : [
          {
            about: 'stop',
            message: `A stop at ${say(lengths.stop)} from the spine cannot hold a front ${say(closed.height)} high`,
            suggestion: `Put the stop less than ${say(closed.height)} from the spine; half of it is usual`,
          },
        ],
  build({ closed: { width, height }, lengths, stock, grid }) {
    const { each, rest } = share(height, 2, grid)
    const base = strip({
      stock,
      panels: [
        { name: 'floor', length: height },
        { name: 'prop', length: rest },
        { name: 'foot', length: each },
      ],
      folds: ['valley', 'mountain'],
      across: width,
      along: 'height',
    })
    const level = (y: Length) => ({ from: point(zero, y), to: point(width, y) })
    const front = sheet('front', stock, { width, height })
    return {
      pieces: [...base.pieces, front.piece],
      plates: [...base.plates, front.plate],
      hinges: base.hinges,
      // Shut, a line of the foot lies as far below the spine as it lies above the mountain fold: its height less twice
      // the prop is its height on the front.
      bonds: [glued('front', 'foot', point(zero, times(rest, 2)))],
      stops: [{ plate: 'front', edge: level(zero), onto: 'floor', line: level(minus(height, lengths.stop)) }],
      display: { angles: [], plate: 'floor', rests: 'flat', turn: 0 },
    }
  },
  starter: `fold: easel
closed: 5 x 5 in
base: {stock: white card, weight: 300 gsm}
layers:
  front mat:
    on: front
    border: 1/8 in
    stock: patterned paper
  stop strip:
    on: floor
    border: {left: 1 in, right: 1 in, top: stop, bottom: closed.height - stop - 1/2 in}
    raise: 2 mm
    stock: white card`,
}
