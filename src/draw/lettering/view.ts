import type { Card, Lettering } from '../../card/card.ts'
import type { Stock } from '../../card/structure.ts'
import { type Length, minus, mm, plus, type Size } from '../../length/length.ts'
import { setLetters } from '../letters.ts'
import { outlineOf } from '../pieces.ts'
import { type Flat, flatLoop, toMm } from '../plane.ts'

/** A letter where it goes: its room in mm of the strip, y upwards, and where its baseline has its middle. */
export interface ShownLetter {
  readonly text: string
  readonly left: number
  readonly right: number
  readonly low: number
  readonly high: number
  readonly base: Flat
}

/** Letters on what carries them, seen from the side that they are on. Flat coordinates are mm, y upwards. */
export interface LetteringView {
  readonly lettering: Lettering
  readonly size: Size
  /** What the strip is made of, and whether it is the back of the sheet that is seen. */
  readonly stock: Stock
  readonly back: boolean
  /** The strip's edge and its windows. */
  readonly loops: readonly (readonly Flat[])[]
  readonly letters: readonly ShownLetter[]
  /** Size of the letters as they are drawn, in mm. */
  readonly letterSize: number
  /** What is left between the ends of the strip and the letters. */
  readonly margins: { readonly left: Length; readonly right: Length }
  /** The one width of all letters; nothing when they differ. */
  readonly width?: Length
}

/** A lettering on its piece or on its panel; nothing when what it is on was not made. */
export function letteringView(card: Card, lettering: Lettering): LetteringView | undefined {
  const strip = stripOf(card, lettering)
  if (!strip) return undefined
  const { widths, marks } = lettering
  const set = setLetters(lettering, toMm(strip.size.height))
  const letters = set.letters.map(({ text, corner: [left, low], width, height, base }) => ({
    text,
    left,
    right: left + width,
    low,
    high: low + height,
    base,
  }))
  const [first, last, width] = [marks[0], marks.at(-1), widths[0]]
  if (!first || !last || !width) return undefined
  const right = minus(strip.size.width, plus(last, widths.at(-1) ?? width))
  return {
    ...strip,
    lettering,
    letters,
    letterSize: set.size,
    margins: { left: first, right },
    ...(widths.every((w) => w.equals(width)) && { width }),
  }
}

type Strip = Pick<LetteringView, 'size' | 'stock' | 'back' | 'loops'>

function stripOf({ structure }: Card, { on, pads }: Lettering): Strip | undefined {
  const piece = structure.pieces.find(({ name }) => name === on)
  const plate = structure.plates.find(({ name }) => name === on)
  if (piece) {
    const holes = structure.plates.find((p) => p.piece === on)?.holes ?? []
    const loops = [...outlineOf(structure, piece), ...holes.map(flatLoop)]
    return { size: piece.size, stock: piece.stock, back: false, loops }
  }
  const sheet = structure.pieces.find(({ name }) => name === plate?.piece)
  if (!plate || !sheet) return undefined
  const loops = [plate.outline, ...plate.holes].map(flatLoop)
  const [xs, ys] = [loops.flat().map(([x]) => x), loops.flat().map(([, y]) => y)]
  const [left, low] = [Math.min(...xs), Math.min(...ys)]
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - low]
  const back = pads[0]?.side === 'back'
  const hangs = structure.upsideDown?.includes(on) === true
  // From the back left and right change places; what hangs is read head over heels, so its left end stays on the left.
  const seen = ([x, y]: Flat): Flat => {
    const [u, v] = [x - left, y - low]
    return back ? (hangs ? [u, height - v] : [width - u, v]) : [u, v]
  }
  return {
    size: sizeOf(plate.outline),
    stock: sheet.stock,
    back,
    loops: loops.map((loop) => loop.map(seen)),
  }
}

function sizeOf(outline: readonly { readonly x: Length; readonly y: Length }[]): Size {
  const range = (all: readonly Length[]): Length => {
    const sorted = [...all].sort((a, b) => a.compare(b))
    return minus(sorted.at(-1) ?? mm(0), sorted[0] ?? mm(0))
  }
  return { width: range(outline.map(({ x }) => x)), height: range(outline.map(({ y }) => y)) }
}
