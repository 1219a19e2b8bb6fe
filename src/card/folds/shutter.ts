import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, plus, shorter, times, zero } from '../../length/length.ts'
import { point, rectangle } from '../strip.ts'
import type { Fold, Hinge, Plate, Point, Segment, Side } from '../structure.ts'
import type { BuildInput, FoldStyle, Limit } from '../style.ts'

type P = 'end' | 'door'

/** The three bands between the slits, and how they fold: the middle one comes forward, the doors go back. */
const bands = ['lower', 'middle', 'upper'] as const
const foldsOf = (band: (typeof bands)[number]): readonly Fold[] =>
  band === 'middle'
    ? ['valley', 'mountain', 'mountain', 'valley']
    : ['mountain', 'valley', 'valley', 'mountain']

/**
 * left end e · [left e · W · right e] · right end e, slit twice so that the part in brackets is three bands. The doors
 * fold M V V M, the middle band V M M V.
 *
 * Shut, the left end reaches from 0 to e, each band from there back to 0, over the whole width to W, and back to W - e,
 * where the right end begins, which reaches to W. All bands have the same creases, so they close together: the sheet is
 * W + 4·e. The ends meet in the middle when e is W/2; what does not halve on the ruler is a gap between them.
 */
export const shutter: FoldStyle<P> = {
  name: 'shutter',
  summary:
    'A card slit twice and pulled open sideways: its middle comes forward, doors above and below fold back.',
  remainder: 'a gap between the two ends',
  parameters: {
    end: { help: 'width of the two end panels', usual: 'closed.width / 2', round: 'down' },
    door: { help: 'height of the doors above and below', usual: 'closed.height / 4', round: 'down' },
  },
  panels: {
    'left end': 'face',
    'right end': 'face',
    ...Object.fromEntries(
      bands.flatMap((band): [string, Side][] => [
        [`${band} left`, 'face'],
        [band, 'face'],
        [`${band} right`, 'face'],
      ]),
    ),
  },
  limits,
  build({ closed: { width, height }, lengths: { end, door }, stock }) {
    const [inner, outer] = [plus(width, times(end, 3)), plus(width, times(end, 4))]
    const marks = [end, times(end, 2), plus(width, times(end, 2)), inner]
    const slits = [door, minus(height, door)]
    const plate = (name: string, from: Point, to: Point): Plate => {
      const size = { width: minus(to.x, from.x), height: minus(to.y, from.y) }
      return { name, piece: 'base', outline: rectangle(size, from), holes: [] }
    }
    const names = (band: string) => ['left end', `${band} left`, band, `${band} right`, 'right end']
    const edges = [zero, ...slits, height]
    const plates = bands.flatMap((band, i) =>
      names(band)
        .slice(1, -1)
        .map((name, k) => plate(name, cornerAt(marks, edges, k, i), cornerAt(marks, edges, k + 1, i + 1))),
    )
    const hinges = bands.flatMap((band, i) =>
      foldsOf(band).map((fold, k): Hinge => {
        const line = { from: cornerAt(marks, edges, k, i), to: cornerAt(marks, edges, k, i + 1) }
        return { between: [names(band)[k] ?? '', names(band)[k + 1] ?? ''], line, fold }
      }),
    )
    const cuts = slits.map((y): Segment => ({ from: point(end, y), to: point(inner, y) }))
    const ends = [
      plate('left end', point(zero, zero), point(end, height)),
      plate('right end', point(inner, zero), point(outer, height)),
    ]
    // Three bands of four creases between two ends: six of the twelve are free.
    const led = [...hinges.slice(0, 4), ...hinges.slice(4, 5), ...hinges.slice(8, 9)]
    return {
      pieces: [{ name: 'base', kind: 'base', stock, count: 1, size: { width: outer, height }, cuts }],
      plates: [...ends, ...plates],
      hinges,
      bonds: [],
      stops: [],
      display: {
        angles: led.map(({ between }) => ({ hinge: between, degrees: 75 })),
        plate: 'left end',
        rests: 'upright',
        turn: 20,
      },
    }
  },
  starter: `fold: shutter
closed: 4 1/4 x 5 1/2 in
base: {stock: white card, weight: 250 gsm}
layers:
  end strip:
    on: [left end, right end]
    border: 1/8 in
    stock: patterned paper
  picture:
    on: middle
    border: 1/8 in
    stock: patterned paper`,
}

const cornerAt = (xs: readonly Length[], ys: readonly Length[], i: number, k: number): Point =>
  point(xs[i] ?? zero, ys[k] ?? zero)

function limits({ closed, lengths: { end, door }, grid, say }: BuildInput<P>): Limit<P>[] {
  const [widest, highest] = [
    fitInside(part(closed.width, 2), grid),
    fitInside(part(minus(closed.height, grid), 2), grid),
  ]
  const wrong = (about: P, message: string, most: Length): Limit<P>[] => [
    { about, message, suggestion: `Make the ${about} at most ${say(most)}` },
  ]
  return [
    ...(shorter(zero, end) && !shorter(widest, end)
      ? []
      : wrong(
          'end',
          `Two ends of ${say(end)} do not fit side by side on a card ${say(closed.width)} wide`,
          widest,
        )),
    ...(shorter(zero, door) && !shorter(highest, door)
      ? []
      : wrong('door', `Doors of ${say(door)} leave no middle on a card ${say(closed.height)} high`, highest)),
  ]
}
