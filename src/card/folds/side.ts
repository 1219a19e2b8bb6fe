import { upright } from '../strip.ts'
import type { FoldStyle } from '../style.ts'

/** front W · V · back W. The spine is on the left of the front. */
export const side: FoldStyle<never> = {
  name: 'side',
  summary: 'One sheet folded once, opening like a book.',
  parameters: {},
  panels: { front: 'back', back: 'face' },
  limits: () => [],
  build({ closed, stock }) {
    return upright(
      {
        stock,
        panels: [
          { name: 'front', length: closed.width },
          { name: 'back', length: closed.width },
        ],
        folds: ['valley'],
        across: closed.height,
      },
      'back',
      [['front', 'back', 130]],
      66,
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
