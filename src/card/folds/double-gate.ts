import { fitInside, mustCover } from '../../length/grid.ts'
import { inches, minus, shorter, times } from '../../length/length.ts'
import { doorsOf } from '../making/doors.ts'
import { bySpine, closedBySpine } from '../making/on-top.ts'
import { spineChoice } from '../making/spine.ts'
import { isUsual } from '../making/usual.ts'
import { upright } from '../strip.ts'
import type { BuildInput, FoldStyle, Limit, Panels } from '../style.ts'

/**
 * left door W - c · V · cover W · V · back W · V · right door W - c. The doors fold in, then the cover over them.
 *
 * Both doors hang on the outer edge of the shut card and reach towards the spine. Each folds in once and lies beside
 * the spine, in no other fold, so cover and back are alike and the doors are: what the creep c has to clear is the two
 * doors that lie in the spine, twice the caliper of the sheet.
 */
export const doubleGate: FoldStyle<'creep', never, 'spine'> = {
  name: 'double gate',
  summary: 'A card that opens like a book onto two doors, which open to a sheet four panels wide.',
  parameters: {
    creep: { help: 'how far the folded doors stay from the spine', usual: '1/16 in', round: 'up' },
  },
  choices: { spine: spineChoice },
  panels: panelsOf('left door', 'right door'),
  panelsFor: (chosen) => panelsOf(...doorsOf(chosen)),
  limits,
  build(input) {
    const [left, right] = doorsOf(input)
    return bySpine(input, ({ width, height }) => {
      const door = minus(width, input.lengths.creep)
      return upright(
        {
          stock: input.stock,
          panels: [
            { name: left, length: door },
            { name: 'cover', length: width },
            { name: 'back', length: width },
            { name: right, length: door },
          ],
          folds: ['valley', 'valley', 'valley'],
          across: height,
        },
        'back',
        [
          ['cover', 'back', 30],
          [left, 'cover', 45],
          ['back', right, 45],
        ],
      )
    })
  },
  starter: `fold: double gate
closed: 5 x 7 in
base: {stock: white card, weight: 250 gsm}
layers:
  cover panel:
    on: cover
    border: 1/8 in
    stock: patterned paper
  door panel:
    on: [left door, right door]
    border: 1/8 in
    stock: coloured paper
  left picture:
    on: cover
    side: inside
    border: 1/4 in
    stock: white paper
  right picture:
    on: back
    border: 1/4 in
    stock: white paper`,
}

function limits(input: BuildInput<'creep'>): Limit<'creep'>[] {
  const { lengths, stock, grid, say } = input
  const least = mustCover(times(stock.caliper, 2), grid)
  const most = minus(fitInside(closedBySpine(input).width, grid), grid)
  const [about, creep] = ['creep', say(lengths.creep)] as const
  if (shorter(lengths.creep, least))
    return [
      {
        about,
        message: `With a creep of ${creep} the two doors are pinched in the spine, where they are ${say(times(stock.caliper, 2))} thick`,
        suggestion: `Make the creep at least ${say(least)}`,
      },
    ]
  if (!shorter(most, lengths.creep)) return []
  return [
    {
      about,
      message: `A creep of ${creep} leaves nothing of the doors`,
      suggestion: `Make the creep at most ${say(most)}; ${isUsual(inches(1, 16), 'up', input)}`,
    },
  ]
}

function panelsOf(left: string, right: string): Panels {
  return { [left]: 'back', cover: 'back', back: 'face', [right]: 'back' }
}
