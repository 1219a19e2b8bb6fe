import { type Length, minus, negative, plus, type Size, times, zero } from '../../length/length.ts'
import { point, type Strip, strip } from '../strip.ts'
import type { Bend, Bond, Hinge, Stock } from '../structure.ts'
import { glued } from './glue.ts'

/** Two sides that carry frames one behind the other, the last one being the backdrop. */
export interface Concertina {
  readonly stock: Stock
  /** The backdrop, and the shut card. */
  readonly size: Size
  /** Frames from front to back. */
  readonly frames: readonly string[]
  readonly pleat: Length
  /** How far the edges of the frames before the backdrop lie inside those of the backdrop. */
  readonly creep: Length
}

type Hand = 'left' | 'right'

/** How far the pleats of the standing card are turned out of the frames, in degrees. */
const turnedOut = 60

/** One side, tab · pleat · pleat · tab …, all of one width, V M V M …; the other is the same piece upside down. */
export function sideStrip({ stock, size, frames, pleat }: Concertina, hand: Hand): Strip {
  const names = frames.flatMap((_, k) => [
    `${hand} tab ${k + 1}`,
    ...(k < frames.length - 1 ? [`${hand} pleat ${2 * k + 1}`, `${hand} pleat ${2 * k + 2}`] : []),
  ])
  return strip({
    piece: 'sides',
    stock,
    panels: names.map((name) => ({ name, length: pleat })),
    folds: names.slice(1).map((_, i) => (i % 2 === 0 ? 'valley' : 'mountain')),
    across: size.height,
    along: 'width',
  })
}

/**
 * Glues the tabs of a side. Laid out from the front, panels go outwards and inwards by turns, and every third one is a
 * tab: those of odd frames go outwards, with their face away, those of even ones inwards, with their face to the front.
 */
export function tabBonds({ size, frames, pleat, creep }: Concertina, hand: Hand): Bond[] {
  const last = frames.length - 1
  return frames.map((frame, k) => {
    const [outwards, start] = [k % 2 === 0, times(pleat, 3 * k)]
    // Where the strip's lower left corner comes to lie when it goes on to the right, or to the left.
    const x = outwards ? plus(start, pleat) : negative(start)
    const edge = k === last ? x : minus(x, creep)
    const mirrored = minus(size.width, x, ...(k === last ? [] : [creep]))
    const at = hand === 'left' ? point(edge, zero) : point(mirrored, size.height)
    return glued(`${hand} tab ${k + 1}`, frame, at, {
      over: outwards,
      turn: hand === 'left' ? 0 : 180,
      side: k === last || (k > 0 && outwards) ? 'face' : 'back',
    })
  })
}

/**
 * The creases of both sides, gap by gap from the backdrop. Whoever lays the card flat goes along them, and has closed
 * the ring of a gap before coming to the next.
 */
export const creasesByGap = ({ frames }: Concertina, sides: readonly Strip[]): Hinge[] =>
  frames
    .slice(1)
    .map((_, gap) => sides.flatMap(({ hinges }) => hinges.slice(3 * gap, 3 * gap + 3)))
    .reverse()
    .flat()

/** Each gap is led by three creases: it could move out, sideways and aslant. */
export const pulledOut = (frames: readonly string[]): Bend[] =>
  frames.slice(1).flatMap((_, k): Bend[] => {
    const tab = (hand: Hand): Bend => ({
      hinge: [`${hand} tab ${k + 1}`, `${hand} pleat ${2 * k + 1}`],
      degrees: 180 - turnedOut,
    })
    const ridge = [`left pleat ${2 * k + 1}`, `left pleat ${2 * k + 2}`] as const
    return [tab('left'), { hinge: ridge, degrees: 180 - 2 * turnedOut }, tab('right')]
  })
