import { inches, type Length, negative, plus, shorter, times, zero } from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { isUsual } from '../making/usual.ts'
import { point, strip } from '../strip.ts'
import type { BuildInput, FoldStyle, Limit } from '../style.ts'

type Key = 'around' | 'overlap'

function limits(input: BuildInput<Key>): Limit<Key>[] {
  const { closed, lengths, say } = input
  const { around, overlap } = lengths
  const found: Limit<Key>[] = []
  if (!shorter(zero, around))
    found.push({
      about: 'around',
      message: `A band round a card ${say(around)} thick does not go on`,
      suggestion: 'Give the thickness of the shut card; measure it where it is thickest',
    })
  if (!shorter(zero, overlap) || shorter(closed.width, overlap))
    found.push({
      about: 'overlap',
      message: `An overlap of ${say(overlap)} cannot be glued to a back ${say(closed.width)} wide`,
      suggestion: `Make the overlap more than nothing and at most ${say(closed.width)}; ${isUsual(inches(1), 'up', input)}`,
    })
  return found
}

/**
 * back W · V · right edge T · V · front W · V · left edge T · V · overlap, 2·(W + T) + overlap long, wrapped once round a
 * shut card W wide. The overlap is glued on the outside of the back. Left and right are those of the front as it is seen.
 *
 * T is the thickness of the card, rounded up to a mark of the ruler, so that the band goes on. The closed size is that of
 * the band on the card: the width of the card, and the height of the band.
 */
export const bellyBand: FoldStyle<Key> = {
  name: 'belly band',
  summary:
    'A strip once round a shut card. Its closed size is the width of that card and the height of the band.',
  parameters: {
    around: { help: 'thickness of the shut card that it goes round', usual: '1/16 in', round: 'up' },
    overlap: { help: 'what is glued together at the back', usual: '1 in', round: 'up' },
  },
  panels: { back: 'back', 'right edge': 'back', front: 'back', 'left edge': 'back' },
  limits,
  build({ closed: { width, height }, lengths: { around, overlap }, stock }) {
    const once: Length = times(plus(width, around), 2)
    const base = strip({
      stock,
      panels: [
        { name: 'back', length: width },
        { name: 'right edge', length: around },
        { name: 'front', length: width },
        { name: 'left edge', length: around },
        { name: 'overlap', length: overlap },
      ],
      folds: ['valley', 'valley', 'valley', 'valley'],
      across: height,
      along: 'width',
    })
    const square = base.hinges.map(({ between }) => ({ hinge: between, degrees: 90 }))
    return {
      ...base,
      bonds: [glued('overlap', 'back', point(negative(once), zero), { side: 'back' })],
      stops: [],
      shut: square,
      display: { angles: square.slice(0, 1), plate: 'back', rests: 'upright', turn: -20 },
    }
  },
  starter: `fold: belly band
closed: 5 x 2 in
around: 1/8 in
base: {stock: kraft card, weight: 200 gsm}
layers:
  stripe:
    on: front
    border: {sides: 0 in, ends: 1/4 in}
    stock: patterned paper`,
}
