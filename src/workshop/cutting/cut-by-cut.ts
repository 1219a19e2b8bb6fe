import { type Length, plus, type Size, zero } from '../../length/length.ts'
import type { Layout, PlacedPiece, TrimmerCut } from './cutting.ts'

/** What a cut leaves in the hands of whoever stands at the trimmer. */
export interface AtCut {
  /** The strip that was laid aside before, and is taken up for this cut; a letter. */
  readonly takes?: string
  /** Whether what is cut is turned a quarter from how the last cut was made. */
  readonly turns: boolean
  /** Pieces that are finished with this cut, and get their label. */
  readonly finished: readonly PlacedPiece[]
  /** What is laid aside until later, and gets a letter. */
  readonly aside: readonly string[]
}

/** A part of the sheet, from its lower left corner; strips that have lain aside have a letter. */
interface Part extends Size {
  readonly x: Length
  readonly y: Length
  readonly letter?: string
}

/**
 * Goes through the cuts of a layout as a hand does: each falls on the part that holds it, and what falls apart is a piece
 * that is finished, a strip that is cut again at once or laid aside, or waste. It only looks at where the cuts and the
 * pieces are.
 */
export function cutByCut({ placed, cuts }: Pick<Layout, 'placed' | 'cuts'>, sheet: Size): AtCut[] {
  let parts: Part[] = [{ ...sheet, x: zero, y: zero }]
  let letters = 0
  const isNeeded = (part: Part, from: number): boolean => cuts.slice(from).some((cut) => falls(cut, part))
  return cuts.map((cut, i): AtCut => {
    const part = parts.find((one) => falls(cut, one))
    const next = cuts[i + 1]
    if (!part) return { turns: false, finished: [], aside: [] }
    const { letter: takes, ...bare } = part
    const fallen = partedBy(cut, bare)
    const finished = fallen.flatMap((one) => {
      const inside = placed.filter((piece) => holds(one, piece))
      return inside.length === 1 && !isNeeded(one, i + 1) ? inside : []
    })
    const aside: string[] = []
    const kept = fallen.map((one, side): Part => {
      if (!isNeeded(one, i + 1) || (next && falls(next, one))) return one
      // What is left of a strip keeps its letter; what is cut off it gets one of its own.
      const letter = takes !== undefined && side === 1 ? takes : letterOf(letters++)
      aside.push(letter)
      return { ...one, letter }
    })
    parts = [...parts.filter((one) => one !== part), ...kept]
    const before = cuts[i - 1]
    return {
      ...(takes !== undefined && { takes }),
      turns: before !== undefined && before.across !== cut.across,
      finished,
      aside,
    }
  })
}

/** Whether a cut goes through a part from edge to edge; the knife's gap may have taken a little off it. */
function falls({ across, at, from, to }: TrimmerCut, { x, y, width, height }: Part): boolean {
  const [start, long, low, high] = across === 'width' ? [x, width, y, height] : [y, height, x, width]
  return at.gt(start) && at.lt(plus(start, long)) && from.gte(low) && to.lte(plus(low, high))
}

/** The two parts of a part. */
function partedBy({ across, at }: TrimmerCut, part: Part): [Part, Part] {
  const [start, side] = across === 'width' ? (['x', 'width'] as const) : (['y', 'height'] as const)
  const first = at.sub(part[start]) as Length
  return [
    { ...part, [side]: first },
    { ...part, [start]: at, [side]: part[side].sub(first) as Length },
  ]
}

const holds = (part: Part, piece: PlacedPiece): boolean =>
  piece.x.gte(part.x) &&
  piece.y.gte(part.y) &&
  plus(piece.x, piece.width).lte(plus(part.x, part.width)) &&
  plus(piece.y, piece.height).lte(plus(part.y, part.height))

/** r, s … z, r2: no strip is taken for a layout or for a piece of the drawing, which begin with A. */
const letterOf = (n: number): string =>
  String.fromCharCode(114 + (n % 9)) + (n >= 9 ? String(Math.floor(n / 9) + 1) : '')
