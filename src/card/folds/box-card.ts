import { type Length, minus, negative, plus, times, zero } from '../../length/length.ts'
import { entriesOf } from '../chosen.ts'
import { barNames, barsAcross } from '../making/box-bars.ts'
import { type BoxCardInput, type BoxCardKey, boxCardLimits } from '../making/box-card-limits.ts'
import { glued } from '../making/glue.ts'
import { chosenBefore } from '../making/spine.ts'
import { point, rectangle, strip } from '../strip.ts'
import type { Bend, Hinge, Plate } from '../structure.ts'
import type { Built, FoldStyle, Panels } from '../style.ts'

/**
 * back a · V · right side b · V · front a · V · left side b · V · tab, a + b = W. The tab is stuck inside the back, so
 * the four walls are a parallelogram: it stands square and lies flat, the sides beside front and back. The back is H
 * high. On the other walls, H - flap high, flaps stand that fold outwards; they are flat when the card is shut.
 *
 * Between the sides bars run across, parallel to the front: each has a tab at both ends, stuck as far behind the front on
 * one side as on the other, and makes a parallelogram with it. They share the depth evenly, what does not divide on
 * the ruler lies behind the last one, and their tabs reach no further than the next one.
 */
const styleOf = (bars: number): FoldStyle<BoxCardKey, 'bars'> => ({
  name: 'box card',
  summary:
    'A box without a bottom that lies flat, with flaps that fold outwards and bars across it to stick things on.',
  remainder: 'the stretch behind the last bar',
  parameters: {
    depth: {
      help: 'how deep the box stands: the width of its sides',
      usual: 'closed.width / 3',
      round: 'down',
    },
    flap: {
      help: 'height of the flaps on the front and the sides',
      usual: 'closed.height / 3',
      round: 'nearest',
    },
    tab: {
      help: 'width of the tab that closes the box; those of the bars are no wider',
      usual: '1/2 in',
      round: 'nearest',
    },
    bar: {
      help: 'height of the bars; their upper edges are level with the sides',
      usual: '1 in',
      round: 'nearest',
    },
  },
  counts: { bars: { help: 'how many bars run across the box', usual: 2, least: 0, most: 4 } },
  panels: panelsOf(bars),
  pieces: bars > 0 ? ['bar'] : [],
  read(reading, fields) {
    const { counts } = chosenBefore(reading, fields, generic(boxCard))
    const style = generic(styleOf(counts.bars ?? 0))
    return { style, entries: entriesOf(style, fields) }
  },
  limits: boxCardLimits,
  build,
  starter: `fold: box card
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  front panel:
    on: front
    border: 1/8 in
    stock: patterned paper
  side panel:
    on: [left side, right side]
    border: 1/8 in
    stock: patterned paper`,
})

const generic = (style: FoldStyle<BoxCardKey, 'bars'>): FoldStyle => style as unknown as FoldStyle

const panelsOf = (bars: number): Panels => ({
  back: 'face',
  'right side': 'back',
  'right flap': 'face',
  front: 'back',
  'front flap': 'face',
  'left side': 'back',
  'left flap': 'face',
  ...Object.fromEntries(barNames(bars).map((name) => [name, 'face'])),
})

function build({ closed, lengths, stock, counts, grid }: BoxCardInput): Built {
  const { depth, flap, tab, bar } = lengths
  const [wide, wall] = [minus(closed.width, depth), minus(closed.height, flap)]
  const base = strip({
    stock,
    panels: [
      { name: 'back', length: wide },
      { name: 'right side', length: depth },
      { name: 'front', length: wide },
      { name: 'left side', length: depth },
      { name: 'tab', length: tab },
    ],
    folds: ['valley', 'valley', 'valley', 'valley'],
    across: wall,
    along: 'width',
  })
  const ends = [wide, closed.width, plus(closed.width, wide), times(closed.width, 2)] as const
  const whole = { width: plus(ends[3], tab), height: closed.height }
  const flaps = [
    flapOn('right side', 'right flap', ends[0], ends[1]),
    flapOn('front', 'front flap', ends[1], ends[2]),
    flapOn('left side', 'left flap', ends[2], ends[3]),
  ]
  const bars = barsAcross(
    { bars: counts.bars, wide, depth, wall, height: bar, tab, stock, grid },
    ends[1],
    ends[2],
  )
  const back: Plate = {
    name: 'back',
    piece: 'base',
    outline: rectangle({ width: wide, height: closed.height }),
    holes: [],
  }
  return {
    pieces: [
      {
        ...base.pieces[0],
        size: whole,
        cuts: [
          ...ends.map((x) => ({ from: point(x, wall), to: point(x, closed.height) })),
          { from: point(ends[3], wall), to: point(whole.width, wall) },
        ],
      },
      ...bars.pieces,
    ],
    plates: [
      back,
      ...base.plates.slice(1),
      ...flaps.map(
        ({ flap: name, from, to }): Plate => ({
          name,
          piece: 'base',
          outline: rectangle({ width: minus(to, from), height: flap }, point(from, wall)),
          holes: [],
        }),
      ),
      ...bars.plates,
    ],
    hinges: [
      ...base.hinges,
      ...flaps.map(
        ({ on, flap: name, from, to }): Hinge => ({
          between: [on, name],
          line: { from: point(from, wall), to: point(to, wall) },
          fold: 'mountain',
        }),
      ),
      ...bars.hinges,
    ],
    bonds: [glued('tab', 'back', point(negative(ends[3]), zero)), ...bars.bonds],
    stops: [],
    shut: [
      { hinge: ['back', 'right side'], degrees: 0 },
      ...flaps.map(({ on, flap: name }): Bend => ({ hinge: [on, name], degrees: 0 })),
    ],
    display: {
      angles: [
        { hinge: ['back', 'right side'], degrees: 90 },
        ...flaps.map(
          ({ on, flap: name }): Bend => ({ hinge: [on, name], degrees: on === 'front' ? 140 : 110 }),
        ),
      ],
      plate: 'back',
      rests: 'upright',
      turn: 0,
    },
  }
}

/** A flap on a wall, between two places of the base. */
const flapOn = (on: string, flap: string, from: Length, to: Length) => ({ on, flap, from, to })

/** See `styleOf`. */
export const boxCard = styleOf(2)
