import { fitInside, mustCover } from '../../length/grid.ts'
import { minus, part, plus, type Size, shorter, smaller, times } from '../../length/length.ts'
import { doorsOf, doorWidth, partLimits } from '../making/doors.ts'
import { glued } from '../making/glue.ts'
import { bySpine } from '../making/on-top.ts'
import { spineChoice } from '../making/spine.ts'
import { point, strip } from '../strip.ts'
import type { BuildInput, Built, FoldStyle, Limit, Panels } from '../style.ts'

type Lengths = 'part' | 'border'

/**
 * A gate, left door D · V · back W · V · right door D with D = (W - part)/2, and in it a centre of its own: centre
 * front w · V · centre back w, with w = W - 2·border and as much less high.
 *
 * Stuck on the back, the centre lies at the border from the back's left edge. Stuck on the left door, whose crease is D
 * from the sheet's left edge, it lies there as far from the crease, so that the shut door lays it in the same place: its
 * right edge is at D - border, and its left one sticks out beyond the door.
 */
export const joy: FoldStyle<Lengths, never, 'on' | 'spine'> = {
  name: 'joy',
  summary: 'A gate card with a small side-fold card in its centre, which a door carries along.',
  remainder: 'the gap between the doors',
  parameters: {
    part: { help: 'gap between the shut doors', usual: '0', round: 'up' },
    border: { help: 'what is left round the centre', usual: '1/2 in', round: 'up' },
  },
  choices: {
    on: {
      help: 'what the back of the centre is stuck on: the first door, or the back',
      words: ['door', 'back'],
    },
    spine: { ...spineChoice, help: 'where the first door hangs, and the spine of the centre is' },
  },
  panels: panelsOf('left door', 'right door'),
  panelsFor: (chosen) => panelsOf(...doorsOf(chosen)),
  pieces: ['centre'],
  limits,
  build: (input) => bySpine(input, (closed) => built(input, closed)),
  starter: `fold: joy
closed: 5 x 7 in
base: {stock: white card, weight: 250 gsm}
layers:
  door panel:
    on: [left door, right door]
    border: 1/8 in
    stock: patterned paper
  centre mat:
    on: centre front
    border: 1/8 in
    stock: coloured paper
  message:
    on: centre back
    border: 1/4 in
    stock: writing paper`,
}

function limits(input: BuildInput<Lengths>): Limit<Lengths>[] {
  const { closed, lengths, stock, grid, say } = input
  const thick = times(stock.caliper, 2)
  const least = mustCover(thick, grid)
  const most = fitInside(part(minus(smaller(closed.width, closed.height), grid), 2), grid)
  const parts = partLimits(input)
  if (parts.length > 0) return parts
  const border = (message: string, suggestion: string): Limit<Lengths>[] => [
    { about: 'border', message: `A border of ${say(lengths.border)} ${message}`, suggestion },
  ]
  if (shorter(lengths.border, least))
    return border(
      `pinches the centre, which is ${say(thick)} thick, in the creases of the doors`,
      `Make the border at least ${say(least)}`,
    )
  return shorter(most, lengths.border)
    ? border('leaves nothing of the centre', `Make the border at most ${say(most)}`)
    : []
}

function built(input: BuildInput<Lengths>, { width, height }: Size): Built {
  const { lengths, stock, grid, choices } = input
  const [left, right] = doorsOf(input)
  const door = doorWidth(width, lengths.part, grid)
  const wide = minus(width, times(lengths.border, 2))
  const base = strip({
    stock,
    panels: [
      { name: left, length: door },
      { name: 'back', length: width },
      { name: right, length: door },
    ],
    folds: ['valley', 'valley'],
    across: height,
    along: 'width',
  })
  const centre = strip({
    piece: 'centre',
    stock,
    panels: [
      { name: 'centre front', length: wide },
      { name: 'centre back', length: wide },
    ],
    folds: ['valley'],
    across: minus(height, times(lengths.border, 2)),
    along: 'width',
  })
  const doors = base.plates.filter(({ name }) => name !== 'back')
  const onDoor = choices.on === 'door'
  const from = onDoor ? minus(door, lengths.border, wide) : plus(door, lengths.border)
  return {
    pieces: [...base.pieces, ...centre.pieces],
    // Both doors lie over the centre, whichever carries it.
    plates: [...doors, ...centre.plates, ...base.plates.filter((plate) => !doors.includes(plate))],
    hinges: [...base.hinges, ...centre.hinges],
    bonds: [glued('centre back', onDoor ? left : 'back', point(minus(from, wide), lengths.border))],
    stops: [],
    display: {
      angles: [
        { hinge: [left, 'back'], degrees: onDoor ? 40 : 65 },
        { hinge: ['back', right], degrees: 65 },
        { hinge: ['centre front', 'centre back'], degrees: onDoor ? 120 : 140 },
      ],
      plate: 'back',
      rests: 'upright',
      turn: 0,
    },
  }
}

function panelsOf(left: string, right: string): Panels {
  return { [left]: 'back', back: 'face', [right]: 'back', 'centre front': 'back', 'centre back': 'face' }
}
