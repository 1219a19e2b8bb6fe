import { type Length, minus, negative, plus, type Size, times, zero } from '../../length/length.ts'
import { point, rectangle } from '../strip.ts'
import type { Bond, Hinge, Plate, Point, Polygon, Segment } from '../structure.ts'
import { glued } from './glue.ts'

/** A frame with walls behind it and returns that are stuck on a back as large as the frame. */
export interface FrameBox {
  readonly frame: Size
  readonly depth: Length
  /** Width of the returns. */
  readonly tab: Length
  /** What is left of the frame round its window. */
  readonly rim: Length
  /** Walls at the left and right only, or all round. */
  readonly walls: 'two' | 'four'
}

/** A wall with its return: from the frame outwards, and along the edge of the frame. */
interface Arm {
  readonly name: string
  readonly place: (out: Length, along: Length) => Point
  readonly length: Length
  /** How much shorter the return is at both ends. */
  readonly inset: Length
  readonly bond: Bond
}

/**
 * return · V · wall · V · frame · V · wall · V · return, and the same up and down if there are walls all round; then the
 * upper and lower returns are shorter at both ends by the width of the others, and the corners are cut away. Its inside
 * up, the sheet is seen from behind: what is on its left is on the right of the box.
 *
 * Folded round, a return lies behind the frame and inside its outline. Seen from the front, those at the sides come back
 * as they lay in the sheet, moved; those at the top and the bottom are turned half round.
 */
export function frameSheet({ frame: { width, height }, depth, tab, rim, walls }: FrameBox) {
  const edge = plus(depth, tab)
  const below = walls === 'four' ? edge : zero
  const [right, top] = [plus(edge, width), plus(below, height)]
  const moved = (name: string, x: Length): Bond => glued(name, 'back', point(x, negative(below)))
  const turned = (name: string, y: Length): Bond =>
    glued(name, 'back', point(plus(width, edge), y), { turn: 180 })
  const sides: Arm[] = [
    {
      name: 'right',
      place: (out, along) => point(minus(edge, out), plus(below, along)),
      length: height,
      inset: zero,
      bond: moved('right return', minus(width, tab)),
    },
    {
      name: 'left',
      place: (out, along) => point(plus(right, out), plus(below, along)),
      length: height,
      inset: zero,
      bond: moved('left return', negative(plus(right, depth))),
    },
  ]
  const ends: Arm[] = [
    {
      name: 'upper',
      place: (out, along) => point(plus(edge, along), plus(top, out)),
      length: width,
      inset: tab,
      bond: turned('upper return', plus(height, top, depth)),
    },
    {
      name: 'lower',
      place: (out, along) => point(plus(edge, along), minus(below, out)),
      length: width,
      inset: tab,
      bond: turned('lower return', tab),
    },
  ]
  const arms = walls === 'four' ? [...sides, ...ends] : sides
  const window = { width: minus(width, times(rim, 2)), height: minus(height, times(rim, 2)) }
  const frame: Plate = {
    name: 'frame',
    piece: 'base',
    outline: rectangle({ width, height }, point(edge, below)),
    holes: [rectangle(window, point(plus(edge, rim), plus(below, rim)))],
  }
  return {
    size: { width: plus(right, edge), height: plus(top, below) },
    cuts: walls === 'four' ? arms.flatMap((arm) => cutsOf(arm, depth, tab)) : [],
    plates: [frame, ...arms.flatMap((arm) => platesOf(arm, depth, tab))],
    hinges: arms.flatMap((arm) => hingesOf(arm, depth)),
    bonds: arms.map(({ bond }) => bond),
  }
}

function platesOf({ name, place, length, inset }: Arm, depth: Length, tab: Length): Plate[] {
  const plate = (part: string, from: Length, to: Length, by: Length): Plate => ({
    name: `${name} ${part}`,
    piece: 'base',
    outline: counterClockwise([
      place(from, by),
      place(to, by),
      place(to, minus(length, by)),
      place(from, minus(length, by)),
    ]),
    holes: [],
  })
  return [plate('wall', zero, depth, zero), plate('return', depth, plus(depth, tab), inset)]
}

function hingesOf({ name, place, length, inset }: Arm, depth: Length): Hinge[] {
  const crease = (between: Hinge['between'], out: Length, by: Length): Hinge => ({
    between,
    line: { from: place(out, by), to: place(out, minus(length, by)) },
    fold: 'valley',
  })
  return [
    crease(['frame', `${name} wall`], zero, zero),
    crease([`${name} wall`, `${name} return`], depth, inset),
  ]
}

/** Both ends of an arm: along its wall, in to its return, and along that. */
function cutsOf({ place, length, inset }: Arm, depth: Length, tab: Length): Segment[] {
  return [(x: Length) => x, (x: Length) => minus(length, x)].flatMap((at) => {
    const path = [
      place(zero, at(zero)),
      place(depth, at(zero)),
      place(depth, at(inset)),
      place(plus(depth, tab), at(inset)),
    ]
    return path.slice(1).flatMap((to, i) => {
      const from = path[i] ?? to
      return from.x.equals(to.x) && from.y.equals(to.y) ? [] : [{ from, to }]
    })
  })
}

/** A rectangle's corners in the order in which an outline has them, whichever way round they are given. */
function counterClockwise(corners: readonly Point[]): Polygon {
  const [a, b, c] = corners
  if (!a || !b || !c) return corners
  const turn = minus(b.x, a.x)
    .mul(minus(c.y, a.y))
    .sub(minus(b.y, a.y).mul(minus(c.x, a.x)))
  return turn.lt(0) ? corners.toReversed() : corners
}
