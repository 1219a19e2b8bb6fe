import { fitInside } from '../../length/grid.ts'
import { minus, part, shorter, times } from '../../length/length.ts'
import { upright } from '../strip.ts'
import type { FoldStyle } from '../style.ts'

/**
 * left door D · V · back W · V · right door D, D = (W - part)/2. What does not halve on the ruler widens the gap: doors
 * of one size take the same layers.
 */
export const gate: FoldStyle<'part'> = {
  name: 'gate',
  summary: 'Two doors that meet in the middle of the front.',
  parameters: { part: { help: 'gap between the shut doors', usual: '0', round: 'up' } },
  panels: { 'left door': 'back', back: 'face', 'right door': 'back' },
  limits: ({ closed, lengths, grid, say }) =>
    shorter(minus(closed.width, lengths.part), times(grid, 2))
      ? [
          {
            about: 'part',
            message: `A gap of ${say(lengths.part)} leaves no doors on a card this wide`,
            suggestion: `Leave less than ${say(part(closed.width, 2))} between the doors`,
          },
        ]
      : [],
  build({ closed, lengths, stock, grid }) {
    const door = fitInside(part(minus(closed.width, lengths.part), 2), grid)
    return upright(
      {
        stock,
        panels: [
          { name: 'left door', length: door },
          { name: 'back', length: closed.width },
          { name: 'right door', length: door },
        ],
        folds: ['valley', 'valley'],
        across: closed.height,
      },
      'back',
      [
        ['left door', 'back', 75],
        ['back', 'right door', 75],
      ],
    )
  },
  starter: `fold: gate
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  door panel:
    on: [left door, right door]
    border: 1/8 in
    stock: patterned paper
  picture:
    on: back
    border: 1/8 in
    stock: white paper`,
}
