import Fraction from 'fraction.js'
import { mustCover } from '../../length/grid.ts'
import { type Length, over, plus, times, toMm, zero } from '../../length/length.ts'
import { point } from '../strip.ts'
import type { Bond, Hinge, Piece, Plate, Point, Segment, Stock } from '../structure.ts'
import { tabEndOf } from './v-limits.ts'
import type { VLengths } from './v-reach.ts'

/**
 * The piece of a v-fold: a sheet 2·wing × (tab + height), with the apex in the middle, `tab` from its lower edge. Below
 * the base creases are the tabs, as wide as `tab` measured straight down, with a notch between them. The corners of the
 * notch are put on the ruler, in the direction that makes the tabs smaller.
 */
export function vPiece(
  lengths: VLengths,
  stock: Stock,
  grid: Length,
): { piece: Piece; plates: Plate[]; hinges: Hinge[] } {
  const { wing, lift, height, tab } = lengths
  const end = tabEndOf(lengths, grid)
  const notch = mustCover(times(lift, over(end, wing)), grid)
  const [apex, tip] = [point(wing, tab), point(wing, plus(tab, height))]
  /** From the crease between the wings outwards, to the right (1) or to the left (-1); up from the lower edge. */
  const at = (side: 1 | -1, out: Length, up: Length): Point => point(plus(wing, times(out, side)), up)
  const half = (side: 1 | -1) => {
    const name = side > 0 ? 'right' : 'left'
    const outer = at(side, wing, plus(tab, lift))
    const [low, inner] = [at(side, wing, lift), at(side, end, notch)]
    const turned = (points: Point[]): Point[] => (side > 0 ? points : points.reverse())
    const plate = (part: string, points: Point[]): Plate => ({
      name: `${name} ${part}`,
      piece: 'wings',
      outline: turned(points),
      holes: [],
    })
    return {
      plates: [
        plate('tab', [apex, inner, low, outer]),
        plate('wing', [apex, outer, at(side, wing, plus(tab, height)), tip]),
      ],
      hinge: {
        between: [`${name} tab`, `${name} wing`],
        line: { from: apex, to: outer },
        fold: 'mountain',
      } satisfies Hinge,
      cuts: [
        { from: apex, to: inner },
        ...(lift.gt(0) ? [{ from: inner, to: low }] : []),
      ] satisfies Segment[],
    }
  }
  const [left, right] = [half(-1), half(1)]
  return {
    piece: {
      name: 'wings',
      kind: 'base',
      stock,
      count: 1,
      size: { width: times(wing, 2), height: plus(tab, height) },
      cuts: [...left.cuts, ...right.cuts],
    },
    plates: [...left.plates, ...right.plates],
    hinges: [
      left.hinge,
      { between: ['left wing', 'right wing'], line: { from: apex, to: tip }, fold: 'mountain' },
      right.hinge,
    ],
  }
}

/**
 * The tabs stuck face down along the glue lines. A tab is turned over, so that the wing lies on the other side of the
 * glue line, and turned by the angle from its crease in the piece, then at 180° - atan(lift/wing), to the glue line.
 *
 * @param place from the distance behind the spine, and along it from the apex, to the base.
 * @param turn of the base, in degrees, against one with its spine upright and its front on the left.
 */
export function vBonds(
  { run, rise, wing, lift, tab }: VLengths,
  place: (out: Length, up: Length) => Point,
  turn: number,
): Bond[] {
  const angle = Math.atan2(toMm(rise), toMm(run)) + Math.atan2(toMm(lift), toMm(wing))
  const { cos, sin, degrees } = exactTurn(angle)
  return ([1, -1] as const).map((side): Bond => {
    // The apex of the piece, turned over, and turned by half a turn less than the tab is, from that of the base.
    const out = plus(times(wing, cos.neg()), times(tab, sin.mul(-side)))
    const up = plus(times(wing, sin.mul(-side)), times(tab, cos))
    return {
      plate: side > 0 ? 'right tab' : 'left tab',
      onto: side > 0 ? 'back' : 'front',
      side: 'face',
      over: true,
      turn: turn + side * (degrees - 180),
      at: place(out, up),
      height: zero,
    }
  })
}

/** Off by no more than this, in radians, if it can be helped: less than 1/100 mm on any card. */
const sameTurn = 1e-5

/** A turn next to `angle`, in radians, whose cosine and sine are fractions, so that what it moves is exact. */
function exactTurn(angle: number): { cos: Fraction; sin: Fraction; degrees: number } {
  const half = plainest(Math.tan(angle / 2), sameTurn / 2)
  const whole = half.mul(half).add(1)
  return {
    cos: whole.neg().add(2).div(whole),
    sin: half.mul(2).div(whole),
    degrees: (2 * Math.atan(half.valueOf()) * 180) / Math.PI,
  }
}

/** Denominators above this make a card too fine to fold in whole numbers. */
const finest = 8000

/**
 * The fraction with the smallest denominator that is no further off than `by`. Just beside a plain fraction that may be
 * very fine: then the plain one is taken, with twice the difference allowed, or four times, until it is near enough.
 */
function plainest(x: number, by: number): Fraction {
  for (let below = 1; below <= finest; below++) {
    const above = Math.round(x * below)
    if (Math.abs(above / below - x) <= by) return new Fraction(above, below)
  }
  return plainest(x, by * 2)
}
