import { inches, minus, shorter } from '../../length/length.ts'
import { bySpine, closedBySpine } from '../making/on-top.ts'
import { spineChoice } from '../making/spine.ts'
import { isUsual } from '../making/usual.ts'
import { upright } from '../strip.ts'
import type { FoldStyle } from '../style.ts'

/** cover W · V · back W · V · tuck W - c. The tuck folds in first and is narrower by the creep, so that it lies flat. */
export const letter: FoldStyle<'creep', never, 'spine'> = {
  name: 'letter',
  summary: 'Three panels; the last one tucks in under the cover.',
  parameters: { creep: { help: 'how much narrower the tucked panel is', usual: '1/16 in', round: 'up' } },
  choices: { spine: { ...spineChoice, help: 'where the cover hangs: the tucked panel is opposite' } },
  panels: { cover: 'back', back: 'face', tuck: 'back' },
  limits(input) {
    const most = minus(closedBySpine(input).width, input.grid)
    if (!shorter(most, input.lengths.creep)) return []
    return [
      {
        about: 'creep',
        message: `A creep of ${input.say(input.lengths.creep)} leaves nothing to tuck in`,
        suggestion: `Make the creep at most ${input.say(most)}; ${isUsual(inches(1, 16), 'up', input)}`,
      },
    ]
  },
  build(input) {
    return bySpine(input, ({ width, height }) =>
      upright(
        {
          stock: input.stock,
          panels: [
            { name: 'cover', length: width },
            { name: 'back', length: width },
            { name: 'tuck', length: minus(width, input.lengths.creep) },
          ],
          folds: ['valley', 'valley'],
          across: height,
        },
        'back',
        [
          ['back', 'tuck', 80],
          ['cover', 'back', 60],
        ],
      ),
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
