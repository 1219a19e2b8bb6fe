import { minus, shorter } from '../../length/length.ts'
import { upright } from '../strip.ts'
import type { FoldStyle } from '../style.ts'

/** cover W · V · back W · V · tuck W - c. The tuck folds in first and is narrower by the creep, so that it lies flat. */
export const letter: FoldStyle<'creep'> = {
  name: 'letter',
  summary: 'Three panels; the right one tucks in under the cover.',
  parameters: { creep: { help: 'how much narrower the tucked panel is', usual: '1/16 in', round: 'up' } },
  panels: { cover: 'back', back: 'face', tuck: 'back' },
  limits: ({ closed, lengths, say }) =>
    shorter(lengths.creep, closed.width)
      ? []
      : [
          {
            about: 'creep',
            message: `A creep of ${say(lengths.creep)} leaves nothing to tuck in`,
            suggestion: `Make the creep less than ${say(closed.width)}; 1/16 in is usual`,
          },
        ],
  build({ closed, lengths, stock }) {
    return upright(
      {
        stock,
        panels: [
          { name: 'cover', length: closed.width },
          { name: 'back', length: closed.width },
          { name: 'tuck', length: minus(closed.width, lengths.creep) },
        ],
        folds: ['valley', 'valley'],
        across: closed.height,
      },
      'back',
      [
        ['back', 'tuck', 80],
        ['cover', 'back', 60],
      ],
    )
  },
  starter: `fold: letter
closed: 4 x 6 in
base: {stock: white card, weight: 250 gsm}
layers:
  cover panel:
    on: cover
    border: 1/8 in
    stock: patterned paper
  message:
    on: back
    border: 1/8 in
    stock: writing paper`,
}
