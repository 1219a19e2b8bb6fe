import { fitInside } from '../../length/grid.ts'
import { minus, negative, part, plus, type Size, times } from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { bySpine } from '../making/on-top.ts'
import { spineChoice } from '../making/spine.ts'
import { raisedLength, type StiltLengths, stiltLimits } from '../making/stilt-limits.ts'
import { point, sheet, strip } from '../strip.ts'
import type { BuildInput, Built, FoldStyle } from '../style.ts'

/**
 * A side-fold card, and a raised panel that is carried parallel to its back on two stilts of height s, each a strip
 * foot t · V · stilt s · M · head t. A link, tab t · M · strip, joins it to the front at s from the spine. So spine and
 * link are as far apart as the two ends of a stilt, and back, front, panel and stilts are parallelograms: the front is a
 * third stilt, which raises the others.
 *
 * Opened square the panel is centred on the back, at s + border from its sides: L = W - 2·(s + border). Shut it has gone
 * s away from the spine, which leaves the border. Feet and heads lie under it: the left foot begins and the right head
 * ends with it, and L > 3·t keeps them off each other. Shut, all strips lie straight. The link is in the middle of the
 * panel's height, a third of it and what does not go into three on the ruler.
 */
export const floatingLayer: FoldStyle<StiltLengths, never, 'spine'> = {
  name: 'floating layer',
  summary: 'A card in which a panel rises from the back on two stilts, drawn by the front.',
  remainder: 'the height of the link, in the middle third of the panel',
  parameters: {
    stilt: { help: 'how high the panel rises', usual: 'closed.width / 8', round: 'nearest' },
    tab: { help: 'width of the tabs that are glued', usual: 'stilt / 2', round: 'down' },
    border: { help: 'what is left round the panel when the card is shut', usual: '1/4 in', round: 'up' },
  },
  choices: { spine: spineChoice },
  panels: { front: 'back', back: 'face', 'raised panel': 'face' },
  pieces: ['raised panel', 'stilts', 'link'],
  limits: stiltLimits,
  build: (input) => bySpine(input, (closed) => built(input, closed)),
  starter: `fold: floating layer
closed: 5 x 7 in
base: {stock: white card, weight: 250 gsm}
layers:
  front mat:
    on: front
    border: 1/8 in
    stock: patterned paper
  picture:
    on: raised panel
    border: 1/8 in
    stock: coloured paper`,
}

function built({ lengths, stock, grid }: BuildInput<StiltLengths>, { width, height }: Size): Built {
  const { stilt, tab, border } = lengths
  const gap = plus(stilt, border)
  const panel = { width: raisedLength(width, lengths), height: minus(height, times(border, 2)) }
  const beside = fitInside(part(panel.height, 3), grid)
  const base = strip({
    stock,
    panels: [
      { name: 'front', length: width },
      { name: 'back', length: width },
    ],
    folds: ['valley'],
    across: height,
    along: 'width',
  })
  const raised = sheet('raised panel', stock, panel)
  const link = strip({
    piece: 'link',
    stock,
    panels: [
      { name: 'link tab', length: tab },
      { name: 'link', length: plus(gap, tab) },
    ],
    folds: ['mountain'],
    across: minus(panel.height, times(beside, 2)),
    along: 'width',
  })
  const stilts = ['left', 'right'].map((side) =>
    strip({
      piece: 'stilts',
      stock,
      panels: [
        { name: `${side} foot`, length: tab },
        { name: `${side} stilt`, length: stilt },
        { name: `${side} head`, length: tab },
      ],
      folds: ['valley', 'mountain'],
      across: minus(panel.height, times(border, 2)),
      along: 'width',
    }),
  )
  const pair = stilts.slice(0, 1).flatMap(({ pieces: [piece] }) => ({ ...piece, count: 2 }))
  const onRight = minus(panel.width, times(tab, 2))
  const on = (of: string) => base.plates.filter(({ name }) => name === of)
  return {
    pieces: [...base.pieces, raised.piece, ...pair, ...link.pieces],
    // From front to back, as they lie when the card is shut.
    plates: [...on('front'), ...link.plates, raised.plate, ...stilts.flatMap((s) => s.plates), ...on('back')],
    hinges: [base, link, ...stilts].flatMap(({ hinges }) => hinges),
    bonds: [
      glued('left foot', 'back', point(plus(width, gap), times(border, 2))),
      glued('right foot', 'back', point(plus(width, gap, onRight), times(border, 2))),
      glued('left head', 'raised panel', point(negative(stilt), border), { side: 'back' }),
      glued('right head', 'raised panel', point(minus(onRight, stilt), border), { side: 'back' }),
      glued('link', 'raised panel', point(negative(plus(tab, gap)), beside), { side: 'back' }),
      glued('link tab', 'front', point(plus(minus(width, stilt), tab), plus(border, beside)), { over: true }),
    ],
    stops: [],
    display: {
      angles: [{ hinge: ['front', 'back'], degrees: 90 }],
      plate: 'back',
      rests: 'upright',
      turn: -75,
    },
  }
}
