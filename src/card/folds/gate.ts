import { doorsOf, doorWidth, partLimits } from '../making/doors.ts'
import { bySpine } from '../making/on-top.ts'
import { spineChoice } from '../making/spine.ts'
import { upright } from '../strip.ts'
import type { FoldStyle, Panels } from '../style.ts'

/**
 * left door D · V · back W · V · right door D, D = (W - part)/2. What does not halve on the ruler widens the gap: doors
 * of one size take the same layers. With the spine at the top the doors are an upper and a lower one.
 */
export const gate: FoldStyle<'part', never, 'spine'> = {
  name: 'gate',
  summary: 'Two doors that meet in the middle of the front.',
  remainder: 'the gap between the doors',
  parameters: { part: { help: 'gap between the shut doors', usual: '0', round: 'up' } },
  choices: { spine: { ...spineChoice, help: 'where the first door hangs: the other is opposite' } },
  panels: panelsOf('left door', 'right door'),
  panelsFor: (chosen) => panelsOf(...doorsOf(chosen)),
  limits: partLimits,
  build(input) {
    const [left, right] = doorsOf(input)
    return bySpine(input, ({ width, height }) => {
      const door = doorWidth(width, input.lengths.part, input.grid)
      return upright(
        {
          stock: input.stock,
          panels: [
            { name: left, length: door },
            { name: 'back', length: width },
            { name: right, length: door },
          ],
          folds: ['valley', 'valley'],
          across: height,
        },
        'back',
        [
          [left, 'back', 75],
          ['back', right, 75],
        ],
      )
    })
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

function panelsOf(left: string, right: string): Panels {
  return { [left]: 'back', back: 'face', [right]: 'back' }
}
