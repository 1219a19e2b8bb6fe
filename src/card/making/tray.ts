import {
  type Length,
  larger,
  minus,
  negative,
  plus,
  type Size,
  smaller,
  times,
  zero,
} from '../../length/length.ts'
import { line, point, rectangle } from '../strip.ts'
import type { Hinge, Piece, Plate, Segment, Stock } from '../structure.ts'
import { glued } from './glue.ts'

/** The tray: the size of its floor, and how high its walls are. */
export interface Tray {
  readonly floor: Size
  readonly wall: Length
}

/** The tray: a floor, four walls round it, and at either end of the two side walls a tab that is stuck in an end wall. */
export function trayParts({ floor: { width, height }, wall }: Tray, tab: Length, stock: Stock) {
  const [x, y] = [
    [zero, wall, plus(wall, width), plus(wall, width, wall)],
    [zero, wall, plus(wall, height), plus(wall, height, wall)],
  ] as const
  const size = { width: x[3], height: y[3] }
  const plate = (name: string, left: Length, bottom: Length, right: Length, top: Length): Plate => ({
    name,
    piece: 'tray',
    outline: rectangle({ width: minus(right, left), height: minus(top, bottom) }, point(left, bottom)),
    holes: [],
  })
  const valley = (one: string, other: string, at: Segment): Hinge => ({
    between: [one, other],
    line: at,
    fold: 'valley',
  })
  const [low, high] = [minus(y[1], tab), plus(y[2], tab)]
  const corners = (['left', 'right'] as const).flatMap((side) => {
    const [from, to, inner] = side === 'left' ? [x[0], x[1], x[1]] : [x[2], x[3], x[2]]
    return (['upper', 'lower'] as const).map((end) => {
      const [crease, edge, far] = end === 'upper' ? [y[2], high, y[3]] : [y[1], low, y[0]]
      const name = `${end} ${side} tab`
      return {
        plate: plate(name, from, smaller(crease, edge), to, larger(crease, edge)),
        hinge: valley(`${side} wall`, name, line(from, crease, to, crease)),
        cuts: [line(from, edge, to, edge), line(inner, crease, inner, far)],
      }
    })
  })
  const piece: Piece = {
    name: 'tray',
    kind: 'base',
    stock,
    count: 1,
    size,
    cuts: corners.flatMap(({ cuts }) => cuts),
  }
  return {
    piece,
    plates: [
      plate('floor', x[1], y[1], x[2], y[2]),
      plate('left wall', x[0], y[1], x[1], y[2]),
      plate('right wall', x[2], y[1], x[3], y[2]),
      plate('upper wall', x[1], y[2], x[2], y[3]),
      plate('lower wall', x[1], y[0], x[2], y[1]),
      ...corners.map((corner) => corner.plate),
    ],
    hinges: [
      valley('floor', 'left wall', line(x[1], y[1], x[1], y[2])),
      valley('floor', 'right wall', line(x[2], y[1], x[2], y[2])),
      valley('floor', 'upper wall', line(x[1], y[2], x[2], y[2])),
      valley('floor', 'lower wall', line(x[1], y[1], x[2], y[1])),
      ...corners.map((corner) => corner.hinge),
    ],
    // Folded up, what was away from the floor is up: the tab's rim comes to the end wall's rim, its crease to the corner.
    bonds: [
      glued('upper left tab', 'upper wall', point(negative(height), plus(y[2], wall)), { turn: 270 }),
      glued('lower left tab', 'lower wall', point(times(wall, 2), zero), { turn: 90 }),
      glued('upper right tab', 'upper wall', point(plus(x[2], y[2]), minus(y[2], x[2])), { turn: 90 }),
      glued('lower right tab', 'lower wall', point(width, x[3]), { turn: 270 }),
    ],
  }
}
