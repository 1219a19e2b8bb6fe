import { fitInside } from '../../length/grid.ts'
import { part } from '../../length/length.ts'
import { stairStyle } from '../making/stair-style.ts'

/**
 * Two slits. The middle band goes down in steps from the front to the back; the two beside it are plain, front · V ·
 * back. What does not halve on the ruler goes to the upper one (the right one when the spine is at the top).
 */
export const centreStep = stairStyle({
  name: 'centre step',
  summary: 'A card slit twice: its middle goes down in steps, and what is beside it is folded plainly.',
  remainder: 'the plain band above, or on the right with the spine at the top',
  plain: 2,
  begin: (plain, grid) => fitInside(part(plain, 2), grid),
  starter: `fold: centre step
closed: 5 1/2 x 4 1/4 in
spine: top
base: {stock: white card, weight: 250 gsm}
layers:
  front mat:
    on: front
    border: 1/8 in
    stock: patterned paper
  wall strip:
    on: front
    side: inside
    border: {left: 1/8 in, right: 1/8 in, top: 1/8 in, bottom: height + 1/8 in}
    stock: white paper
  riser strip:
    on: [riser 1, riser 2, riser 3]
    border: 1/8 in
    stock: patterned paper`,
})
