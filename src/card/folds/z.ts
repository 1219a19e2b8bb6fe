import { shorter } from '../../length/length.ts'
import { upright } from '../strip.ts'
import type { FoldStyle } from '../style.ts'

/** tongue t · M · middle t · V · back W. The middle folds over the back, the tongue folds back again to the front. */
export const z: FoldStyle<'tongue'> = {
  name: 'z',
  summary: 'A card whose front folds back on itself, like the letter Z seen from above.',
  parameters: {
    tongue: {
      help: 'width of the front part and of the part under it',
      usual: 'closed.width / 2',
      round: 'down',
    },
  },
  panels: { tongue: 'face', middle: 'face', back: 'face' },
  limits: ({ closed, lengths, grid, say }) =>
    shorter(lengths.tongue, grid)
      ? [
          {
            about: 'tongue',
            message: `A tongue of ${say(lengths.tongue)} leaves nothing to fold back`,
            suggestion: `Make the tongue at least ${say(grid)}; half the width of the card is usual`,
          },
        ]
      : shorter(closed.width, lengths.tongue)
        ? [
            {
              about: 'tongue',
              message: `A tongue of ${say(lengths.tongue)} sticks out of a card ${say(closed.width)} wide`,
              suggestion: `Make the tongue at most ${say(closed.width)}`,
            },
          ]
        : [],
  build({ closed, lengths, stock }) {
    return upright(
      {
        stock,
        panels: [
          { name: 'tongue', length: lengths.tongue },
          { name: 'middle', length: lengths.tongue },
          { name: 'back', length: closed.width },
        ],
        folds: ['mountain', 'valley'],
        across: closed.height,
      },
      'back',
      [
        ['middle', 'back', 110],
        ['tongue', 'middle', 110],
      ],
    )
  },
  starter: `fold: z
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  front mat:
    on: tongue
    border: 1/8 in
    stock: patterned paper
  back panel:
    on: back
    border: 1/8 in
    stock: white paper`,
}
