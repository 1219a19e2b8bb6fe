import { type Length, times } from '../../length/length.ts'
import { point, rectangle } from '../strip.ts'
import type { Bond, Hinge, Piece, Plate, Segment, Stock } from '../structure.ts'

/** A piece of the mechanism, with its plates and creases, and what of it is stuck on itself. */
export interface Part {
  readonly piece: Piece
  readonly plates: readonly Plate[]
  readonly hinges: readonly Hinge[]
  readonly bonds: readonly Bond[]
}

/**
 * Five squares in a cross: a floor and four walls, each on a valley, of a sheet three times as wide, its corners cut
 * away.
 *
 * @param prefix what the names of its plates begin with.
 */
export function cross({
  piece,
  prefix = '',
  side,
  stock,
}: {
  readonly piece: string
  readonly prefix?: string
  readonly side: Length
  readonly stock: Stock
}): Part {
  const at = (x: number, y: number) => point(times(side, x), times(side, y))
  const line = (x0: number, y0: number, x1: number, y1: number): Segment => ({
    from: at(x0, y0),
    to: at(x1, y1),
  })
  const plate = (name: string, x: number, y: number): Plate => ({
    name: `${prefix}${name}`,
    piece,
    outline: rectangle({ width: side, height: side }, at(x, y)),
    holes: [],
  })
  const crease = (name: string, on: Segment): Hinge => ({
    between: [`${prefix}floor`, `${prefix}${name}`],
    line: on,
    fold: 'valley',
  })
  const whole = times(side, 3)
  return {
    piece: {
      name: piece,
      kind: 'base',
      stock,
      count: 1,
      size: { width: whole, height: whole },
      cuts: [
        line(1, 0, 1, 1),
        line(2, 0, 2, 1),
        line(1, 2, 1, 3),
        line(2, 2, 2, 3),
        line(0, 1, 1, 1),
        line(0, 2, 1, 2),
        line(2, 1, 3, 1),
        line(2, 2, 3, 2),
      ],
    },
    plates: [
      plate('floor', 1, 1),
      plate('left wall', 0, 1),
      plate('right wall', 2, 1),
      plate('upper wall', 1, 2),
      plate('lower wall', 1, 0),
    ],
    hinges: [
      crease('left wall', line(1, 1, 1, 2)),
      crease('right wall', line(2, 1, 2, 2)),
      crease('upper wall', line(1, 2, 2, 2)),
      crease('lower wall', line(1, 1, 2, 1)),
    ],
    bonds: [],
  }
}

/** The same part under other names. */
export const renamed = (
  { piece, plates, hinges, bonds }: Part,
  name: string,
  nameOf: (plate: string) => string,
): Part => ({
  piece: { ...piece, name },
  plates: plates.map((plate) => ({ ...plate, name: nameOf(plate.name), piece: name })),
  hinges: hinges.map((hinge) => {
    const [one, other] = hinge.between
    return { ...hinge, between: [nameOf(one), nameOf(other)] }
  }),
  bonds: bonds.map((bond) => ({ ...bond, plate: nameOf(bond.plate), onto: nameOf(bond.onto) })),
})
