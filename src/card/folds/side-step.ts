import { zero } from '../../length/length.ts'
import { stairStyle } from '../making/stair-style.ts'

/**
 * One slit. The lower band (the left one when the spine is at the top) goes down in steps from the front to the back;
 * the other one is plain, front · V · back. Both bands end on the same two panels, the front above the first tread and
 * the back before the last riser, so both close: see `stairs`.
 */
export const sideStep = stairStyle({
  name: 'side step',
  summary: 'A card slit once: one side of it goes down in steps, the other is folded plainly.',
  plain: 1,
  begin: () => zero,
  starter: `fold: side step
closed: 5 1/2 x 4 1/4 in
spine: top
base: {stock: white card, weight: 250 gsm}
layers:
  front mat:
    on: front
    border: 1/8 in
    stock: patterned paper
  wall picture:
    on: front
    side: inside
    border: {left: band + 1/8 in, right: 1/8 in, top: 1/8 in, bottom: 1/8 in}
    stock: white paper
  riser strip:
    on: [riser 1, riser 2, riser 3]
    border: 1/8 in
    stock: patterned paper`,
})
