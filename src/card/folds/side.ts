import { bySpine } from '../making/on-top.ts'
import { spineChoice } from '../making/spine.ts'
import { upright } from '../strip.ts'
import type { FoldStyle } from '../style.ts'

/** front W · V · back W. The spine is on the left of the front, or at its top. */
export const side: FoldStyle<never, never, 'spine'> = {
  name: 'side',
  summary: 'One sheet folded once, opening like a book or like a tent.',
  parameters: {},
  choices: { spine: spineChoice },
  panels: { front: 'back', back: 'face' },
  limits: () => [],
  build(input) {
    return bySpine(input, ({ width, height }) =>
      upright(
        {
          stock: input.stock,
          panels: [
            { name: 'front', length: width },
            { name: 'back', length: width },
          ],
          folds: ['valley'],
          across: height,
        },
        'back',
        [['front', 'back', 130]],
        66,
      ),
    )
  },
  starter: `fold: side
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  mat:
    on: front
    border: 1/8 in
    stock: patterned paper
  note panel:
    on: back
    border: 3/8 in
    stock: writing paper`,
}
