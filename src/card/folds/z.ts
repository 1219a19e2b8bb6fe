import { shorter } from '../../length/length.ts'
import { entriesOf } from '../chosen.ts'
import { bySpine, closedBySpine } from '../making/on-top.ts'
import { chosenBefore, sidesOf, spineChoice, spineOf } from '../making/spine.ts'
import { upright } from '../strip.ts'
import type { BuildInput, FoldStyle, Limit } from '../style.ts'

type Style = FoldStyle<'tongue', never, 'spine'>

function limits(input: BuildInput<'tongue'>): Limit<'tongue'>[] {
  const { lengths, grid, say } = input
  const { width } = closedBySpine(input)
  if (shorter(lengths.tongue, grid))
    return [
      {
        about: 'tongue',
        message: `A tongue of ${say(lengths.tongue)} leaves nothing to fold back`,
        suggestion: `Make the tongue at least ${say(grid)}; half of the card is usual`,
      },
    ]
  if (!shorter(width, lengths.tongue)) return []
  return [
    {
      about: 'tongue',
      message: `A tongue of ${say(lengths.tongue)} sticks out of a card that has ${say(width)} for it`,
      suggestion: `Make the tongue at most ${say(width)}`,
    },
  ]
}

/** tongue t · M · middle t · V · back W. The middle folds over the back, the tongue folds back again to the front. */
const styleOf = (spine: 'left' | 'top'): Style => ({
  name: 'z',
  summary: 'A card whose front folds back on itself, like the letter Z.',
  parameters: {
    tongue: {
      help: 'width of the front part and of the part under it',
      usual: `${sidesOf(spine).across} / 2`,
      round: 'down',
    },
  },
  choices: { spine: spineChoice },
  panels: { tongue: 'face', middle: 'face', back: 'face' },
  read(reading, fields) {
    const style = styleOf(spineOf(chosenBefore(reading, fields, z)))
    return { style, entries: entriesOf(style, fields) }
  },
  limits,
  build(input) {
    const { tongue } = input.lengths
    return bySpine(input, ({ width, height }) =>
      upright(
        {
          stock: input.stock,
          panels: [
            { name: 'tongue', length: tongue },
            { name: 'middle', length: tongue },
            { name: 'back', length: width },
          ],
          folds: ['mountain', 'valley'],
          across: height,
        },
        'back',
        [
          ['middle', 'back', 110],
          ['tongue', 'middle', 110],
        ],
      ),
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
})

/** See `styleOf`. */
export const z: Style = styleOf('left')
