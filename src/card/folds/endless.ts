import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, same, shorter, smaller, times, zero } from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { line, point, rectangle } from '../strip.ts'
import type { Bond, Hinge, Plate } from '../structure.ts'
import type { BuildInput, FoldStyle, Limit } from '../style.ts'

/** The pieces in front stand upright, those behind lie level. Each has an end, a middle and an end, along its length. */
const names = {
  upper: ['upper left', 'upper middle', 'upper right'],
  lower: ['lower left', 'lower middle', 'lower right'],
  left: ['left top', 'left middle', 'left bottom'],
  right: ['right top', 'right middle', 'right bottom'],
} as const satisfies Record<string, readonly [string, string, string]>

type Names = (typeof names)[keyof typeof names]

function limits({ closed, grid, say }: BuildInput<never>): Limit<never>[] {
  const { width, height } = closed
  const side = smaller(width, height)
  if (!same(width, height))
    return [
      {
        about: 'closed',
        message: `An endless card is square, but this one is ${say(width)} wide and ${say(height)} high`,
        suggestion: `Make it ${say(side)} wide and high`,
      },
    ]
  if (!shorter(side, times(grid, 4))) return []
  return [
    {
      about: 'closed',
      message: `A card ${say(side)} wide has no room for its scores`,
      suggestion: `Make it at least ${say(times(grid, 4))} wide and high`,
    },
  ]
}

/**
 * Four pieces of s × 2·q, all alike, with mountains at q and s - q, where q is a quarter of s: an end, a middle and an
 * end. Two stand upright side by side, with their backs towards the viewer; two lie level behind them, one above the
 * other, with their backs away. They are stuck face to face in the four corners, q × q. Shut, all creases are flat.
 *
 * Bending the creases of the level pieces to 180° turns the upright ones over like two doors, each about a line q from
 * the edge: each covers the same half of the square again, since it reaches q to either side of that line. That is the
 * second face. Bending those of the upright pieces as well gives the third, a cross without the corners; unbending the
 * level ones gives the fourth; and unbending the upright ones the first.
 *
 * When s has no quarter on the ruler, q is the next shorter mark: pieces as long as s and 2·q wide still turn over within
 * the square, and what is left, less than four marks, is a gap between the two pieces.
 */
export const endless: FoldStyle<never> = {
  name: 'endless',
  summary:
    'Four pieces stuck at the corners that fold out again and again: four faces, and back to the first.',
  remainder: 'a gap between the two pieces that lie side by side',
  parameters: {},
  panels: Object.fromEntries(Object.values(names).flatMap((three) => three.map((name) => [name, 'back']))),
  limits,
  build({ closed: { width: long }, stock, grid }) {
    const quarter = fitInside(part(long, 4), grid)
    const wide = times(quarter, 2)
    const marks = [zero, quarter, minus(long, quarter), long]
    const platesOf = (three: Names): Plate[] =>
      three.map((name, i) => {
        const [from = zero, to = zero] = [marks[i], marks[i + 1]]
        const outline = rectangle({ width: minus(to, from), height: wide }, point(from, zero))
        return { name, piece: 'base', outline, holes: [] }
      })
    const crease = (one: string, other: string, x: Length): Hinge => ({
      between: [one, other],
      line: line(x, zero, x, wide),
      fold: 'mountain',
    })
    const hingesOf = ([start, middle, end]: Names): Hinge[] => [
      crease(start, middle, quarter),
      crease(middle, end, minus(long, quarter)),
    ]
    // An upright piece lies with its start at the top. Over and a quarter turned, its (x, y) is at (-y, -x).
    const corner = (plate: string, onto: string, x: Length, y: Length): Bond =>
      glued(plate, onto, point(x, y), { over: true, turn: 90 })
    const all = Object.values(names)
    const hinges = all.flatMap(hingesOf)
    const behind = [...hingesOf(names.upper), ...hingesOf(names.lower)]
    return {
      pieces: [
        { name: 'base', kind: 'base', stock, count: 4, size: { width: long, height: wide }, cuts: [] },
      ],
      plates: all.flatMap(platesOf),
      hinges,
      bonds: [
        corner('left top', 'upper left', wide, wide),
        corner('right top', 'upper right', long, wide),
        corner('left bottom', 'lower left', wide, long),
        corner('right bottom', 'lower right', long, long),
      ],
      stops: [],
      shut: hinges.map(({ between }) => ({ hinge: between, degrees: 0 })),
      display: {
        angles: behind.map(({ between }) => ({ hinge: between, degrees: 60 })),
        plate: 'upper middle',
        rests: 'upright',
        turn: 0,
      },
    }
  },
  starter: `fold: endless
closed: 6 x 6 in
base: {stock: white card, weight: 200 gsm}
layers:
  picture:
    on: [left middle, right middle]
    border: 1/8 in
    stock: patterned paper
  end picture:
    on: [left top, left bottom, right top, right bottom]
    border: 1/8 in
    stock: patterned paper`,
}
