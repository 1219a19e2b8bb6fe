import { fitInside } from '../../length/grid.ts'
import {
  type Length,
  larger,
  minus,
  part,
  plus,
  same,
  shorter,
  smaller,
  times,
  zero,
} from '../../length/length.ts'
import { cornersOf } from '../making/stretches.ts'
import { point } from '../strip.ts'
import type { Hinge, Plate, Point, Segment } from '../structure.ts'
import type { BuildInput, FoldStyle, Limit } from '../style.ts'

type P = 'axis' | 'strip' | 'reach' | 'rim'

/**
 * front a · M · swing b · V · back W - a + b. Shut, the front reaches from 0 to a, the strip of the swing from there
 * back to a - b, and the back from there to W, so the sheet is W + 2·b.
 *
 * A panel in the middle of the height stays with the strip: it reaches r beyond the first crease to either side and is
 * cut free of the front and of the back. Both creases are broken there, and what is left of them above and below lets
 * it turn. It is as wide to the left of its axis as to the right, so that, turned over, it fills its own window in the
 * front, and the other half of it lies on the back.
 */
export const swing: FoldStyle<P> = {
  name: 'swing',
  summary:
    'A card whose front folds back on itself; a panel in its middle turns over when it is pulled open.',
  parameters: {
    axis: {
      help: 'from the left edge to the crease that the panel turns on',
      usual: 'closed.width / 2',
      round: 'nearest',
    },
    strip: { help: 'width of the strip that folds back', usual: 'closed.width / 4', round: 'down' },
    reach: {
      help: 'how far the panel reaches to each side of its axis',
      usual: 'closed.width / 3',
      round: 'down',
    },
    rim: {
      help: 'what is left above and below the panel, and what a layer on `swing` keeps clear at its ends',
      usual: 'closed.height / 4',
      round: 'nearest',
    },
  },
  panels: { front: 'face', swing: 'back', back: 'face' },
  limits,
  build({ closed: { width, height }, lengths: { axis, strip, reach, rim }, stock }) {
    const [second, end] = [plus(axis, strip), plus(width, times(strip, 2))]
    const [left, right] = [minus(axis, reach), plus(axis, reach)]
    const [low, high] = [rim, minus(height, rim)]
    /** Along the window, from a crease round to the same crease again, upwards. */
    const round = (crease: Length, edge: Length): Point[] => [
      point(crease, low),
      point(edge, low),
      point(edge, high),
      point(crease, high),
    ]
    const [before, behind] = [round(axis, left), round(second, right)]
    const outlines = {
      front: [point(zero, zero), point(axis, zero), ...before, point(axis, height), point(zero, height)],
      swing: [
        ...[point(axis, zero), point(second, zero), ...behind],
        ...[point(second, height), point(axis, height), ...before.toReversed()],
      ],
      back: [
        point(second, zero),
        point(end, zero),
        point(end, height),
        point(second, height),
        ...behind.toReversed(),
      ],
    }
    const cuts = [before, ...(same(second, right) ? [] : [behind])].flatMap((path) =>
      path.slice(1).map((to, i): Segment => ({ from: path[i] ?? to, to })),
    )
    const crease = (x: Length, between: Hinge['between'], fold: Hinge['fold'], whole = false): Hinge[] =>
      (whole ? [[zero, height] as const] : [[zero, low] as const, [high, height] as const]).map(
        ([from, to]) => ({ between, line: { from: point(x, from), to: point(x, to) }, fold }),
      )
    return {
      pieces: [{ name: 'base', kind: 'base', stock, count: 1, size: { width: end, height }, cuts }],
      plates: Object.entries(outlines).map(
        ([name, outline]): Plate => ({ name, piece: 'base', outline: cornersOf(outline), holes: [] }),
      ),
      hinges: [
        ...crease(axis, ['front', 'swing'], 'mountain'),
        ...crease(second, ['swing', 'back'], 'valley', same(second, right)),
      ],
      bonds: [],
      stops: [],
      display: {
        angles: [
          { hinge: ['front', 'swing'], degrees: 70 },
          { hinge: ['swing', 'back'], degrees: 70 },
        ],
        plate: 'back',
        rests: 'upright',
        turn: 0,
      },
    }
  },
  starter: `fold: swing
closed: 5 1/2 x 5 1/2 in
base: {stock: white card, weight: 250 gsm}
layers:
  swing mat:
    on: swing
    border: {sides: 1/8 in, ends: rim + 1/8 in}
    stock: patterned paper
  swing picture:
    on: swing
    side: inside
    border: {sides: 1/8 in, ends: rim + 1/8 in}
    stock: white paper`,
}

function limits({ closed, lengths, grid, say }: BuildInput<P>): Limit<P>[] {
  const { axis, strip, reach, rim } = lengths
  const limit = (about: P, message: string, suggestion: string): Limit<P> => ({ about, message, suggestion })
  // The front keeps a rim beside the window, and shut the panel ends within the card.
  const widest = smaller(minus(axis, grid), minus(closed.width, axis))
  const [first, last] = [plus(reach, grid), minus(closed.width, reach)]
  const moved = shorter(axis, first) ? `at least ${say(first)}` : `at most ${say(last)}`
  const cures = [
    ...(shorter(last, first) ? [] : [`the axis ${moved}`]),
    ...(shorter(widest, strip) ? [] : [`the reach at most ${say(widest)}`]),
  ]
  const highest = fitInside(part(minus(closed.height, grid), 2), grid)
  if (shorter(reach, grid))
    return [
      limit(
        'reach',
        'A panel without a reach is none',
        `Make the reach at least ${say(larger(strip, grid))}; a third of the card is usual`,
      ),
    ]
  return [
    ...(shorter(widest, reach)
      ? [
          limit(
            'reach',
            `A panel that reaches ${say(reach)} to each side of an axis at ${say(axis)} does not fit on a card ${say(closed.width)} wide`,
            cures.length > 0 ? `Make ${cures.join(', or ')}` : `Make the reach and the strip smaller`,
          ),
        ]
      : []),
    ...(!shorter(zero, strip) || shorter(reach, strip)
      ? [
          limit(
            'strip',
            `A strip of ${say(strip)} does not carry a panel that reaches ${say(reach)} from its axis`,
            `Make the strip at most ${say(reach)}`,
          ),
        ]
      : []),
    ...(!shorter(zero, rim) || shorter(highest, rim)
      ? [
          limit(
            'rim',
            `A rim of ${say(rim)} above and below leaves no panel, or nothing to turn on`,
            `Make the rim at most ${say(highest)}`,
          ),
        ]
      : []),
  ]
}
