import Fraction from 'fraction.js'
import type { Bond, Hinge, Plate, Structure } from '../../src/card/structure.ts'
import { mm, zero } from '../../src/length/length.ts'
import { pieceOf, point, rectangle, stuck } from './build.ts'

/** One half of a v-fold. */
export interface Half {
  /** Angle of the glue line to the gutter, and of the base crease to the crease between the wings, in degrees. */
  readonly g: number
  readonly s: number
  /** How long the glue line is, in mm. */
  readonly length: number
}

export interface VSpec {
  readonly left: Half
  readonly right: Half
  /** Length of the crease between the wings, in mm. */
  readonly height: number
  /** Whether the wings lie beyond their glue lines when the card is shut (the crease at g + s), or before (at g - s). */
  readonly crease: 'outwards' | 'inwards'
  /** Angle between the pages, in degrees. */
  readonly opening: number
}

const near = (x: number) => mm(new Fraction(Math.round(x * 1e7), 10_000_000))
/** At this distance and angle from the upper end of a line that goes up, towards the right. */
const spot = (length: number, degrees: number) =>
  point(
    near(length * Math.sin((degrees * Math.PI) / 180)),
    near(length * Math.cos((degrees * Math.PI) / 180)),
  )

/**
 * A v-fold on two pages, all of them with the apex at (0, 0). The tabs lie on the other side of the glue line than the
 * wings when the card is shut, so that their creases are flat then.
 */
export function vFoldOf({ left, right, height, crease, opening }: VSpec): Structure {
  const [page, apex, tip] = [mm(200), point(zero, zero), spot(height, 0)]
  const [outer, inner] = [spot(left.length, -left.s), spot(right.length, right.s)]
  const plate = (piece: string, name: string, outline: Plate['outline']): Plate => ({
    name,
    piece,
    outline,
    holes: [],
  })
  const fold = crease === 'outwards' ? 'mountain' : 'valley'
  const hinge = (one: string, other: string, to: typeof apex): Hinge => ({
    between: [one, other],
    line: { from: apex, to },
    fold,
  })
  const bond = (tab: string, onto: string, { g, s }: Half, side: 1 | -1): Bond =>
    crease === 'outwards'
      ? stuck(tab, onto, zero, zero, { over: true, turn: -side * (g + s) })
      : stuck(tab, onto, zero, zero, { turn: side * (s - g) })
  const far = (n: number) => mm(n * 200)
  return {
    pieces: [
      pieceOf('pages', { width: mm(400), height: mm(400) }, zero),
      pieceOf('wings', { width: mm(400), height: mm(400) }, zero),
    ],
    plates: [
      plate('pages', 'page 2', rectangle(far(-1), far(-1), page, mm(400))),
      plate('pages', 'page 1', rectangle(zero, far(-1), page, mm(400))),
      plate('wings', 'left tab', [apex, outer, spot(left.length, -left.s - 5)]),
      plate('wings', 'left wing', [apex, tip, outer]),
      plate('wings', 'right wing', [apex, inner, tip]),
      plate('wings', 'right tab', [apex, spot(right.length, right.s + 5), inner]),
    ],
    hinges: [
      {
        between: ['page 2', 'page 1'],
        line: { from: point(zero, far(-1)), to: point(zero, far(1)) },
        fold: 'valley',
      },
      hinge('left tab', 'left wing', outer),
      hinge('left wing', 'right wing', tip),
      hinge('right wing', 'right tab', inner),
    ],
    bonds: [bond('left tab', 'page 2', left, -1), bond('right tab', 'page 1', right, 1)],
    stops: [],
    shut: [
      { hinge: ['left tab', 'left wing'], degrees: 0 },
      { hinge: ['right tab', 'right wing'], degrees: 0 },
    ],
    display: {
      angles: [{ hinge: ['page 2', 'page 1'], degrees: 180 - opening }],
      plate: 'page 1',
      rests: 'flat',
      turn: 0,
    },
  }
}
