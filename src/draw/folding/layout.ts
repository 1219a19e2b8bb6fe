import type { Box } from '../box.ts'
import { capHeight, textWidth, wrap } from '../label.ts'
import { turnSign } from './arrow-marks.ts'

/** A stage to be laid out: its picture in mm of the card, y downwards, and the words below it. */
export interface Cell {
  readonly box: Box
  /** Its number; written in bold before the words. */
  readonly number: string
  readonly words: string
  /** Whether the work is turned over before it. */
  readonly isTurned: boolean
}

/** A stage in its place. */
export interface Placed {
  /** Where the origin of its picture goes. */
  readonly x: number
  readonly y: number
  readonly left: number
  /** The foot of the row's pictures. */
  readonly base: number
  /** The height of the row's pictures. */
  readonly tall: number
  readonly lines: readonly string[]
  /** The left end of the turn-over sign before it. */
  readonly sign?: number
}

export interface Laid {
  readonly cells: readonly Placed[]
  readonly width: number
  readonly height: number
}

/** In mm: between two stages, between rows, and what lines and arrowheads reach out of a picture. */
const [gap, rowGap, margin] = [4.5, 3.5, 1.2]
/** Between a number and its words, in text sizes, and from line to line. */
export const [afterNumber, lineStep] = [0.45, 1.22]
/** Words may make a stage as wide as this, in text sizes, where its picture is narrower. */
const leastWords = 8.5

/** A turn-over sign: the words below it, one under the other, and what it takes from left to right, in mm. */
export interface Sign {
  readonly words: readonly string[]
  readonly width: number
}

/** @param said what it says; empty for the sign alone. */
export function signOf(said: string, size: number): Sign {
  const words = said === '' ? [] : said.split(' ')
  return { words, width: Math.max(turnSign.width, ...words.map((word) => textWidth(word, size))) }
}

export const inset = (number: string, size: number): number =>
  textWidth(number, size) * 1.06 + afterNumber * size

/**
 * Lays stages out in rows, all at one scale, the pictures of a row on one base line and with even gaps.
 */
export function laidOut(
  cells: readonly Cell[],
  rows: number,
  scale: number,
  size: number,
  sign: Sign,
  broken: (words: string, width: number, size: number) => string[] = evenLines,
): Laid {
  const each = Math.ceil(cells.length / rows)
  const placed: Placed[] = []
  let [top, width] = [0, 0]
  for (let first = 0; first < cells.length; first += each) {
    const row = cells.slice(first, first + each)
    const tall = Math.max(...row.map(({ box }) => (box.bottom - box.top) * scale)) + 2 * margin
    const base = top + tall
    let x = 0
    let most = 0
    for (const [i, cell] of row.entries()) {
      const { box, number, words, isTurned } = cell
      if (i > 0) x += isTurned ? gap * 0.6 : gap
      const at = isTurned ? x : undefined
      if (isTurned) x += sign.width + gap * 0.6
      const wide = (box.right - box.left) * scale + 2 * margin
      const indent = inset(number, size)
      const longest = Math.max(...words.split(' ').map((word) => textWidth(word, size)))
      const room = Math.max(wide - indent, longest, Math.min(textWidth(words, size), leastWords * size))
      const lines = words === '' ? [] : broken(words, room + 0.01, size)
      most = Math.max(most, lines.length, isTurned ? sign.words.length : 1, 1)
      const used = Math.max(wide, indent + Math.max(0, ...lines.map((line) => textWidth(line, size))))
      placed.push({
        x: x + margin - box.left * scale,
        y: base - margin - box.bottom * scale,
        left: x,
        base,
        tall,
        lines,
        ...(at !== undefined && { sign: at }),
      })
      x += used
    }
    width = Math.max(width, x)
    top = base + (0.45 + capHeight + (most - 1) * lineStep + 0.25) * size + rowGap
  }
  return { cells: placed, width, height: top - rowGap }
}

/** As few lines as the width allows, each about as long as the others. */
function evenLines(words: string, width: number, size: number): string[] {
  const lines = wrap(words, width, size)
  for (let share = 0.55; share < 1 && lines.length > 1; share += 0.05) {
    const narrower = wrap(words, width * share, size)
    if (narrower.length === lines.length) return narrower
  }
  return lines
}

/** The rows and the scale at which stages are largest in a room; the least scale where they do not fit. */
export function bestLayout(
  cells: readonly Cell[],
  room: { maxWidth: number; maxHeight: number },
  { least, most }: { least: number; most: number },
  size: number,
  sign: Sign,
): { laid: Laid; scale: number } {
  const fits = ({ width, height }: Laid): boolean => width <= room.maxWidth && height <= room.maxHeight
  const tries = Array.from({ length: cells.length }, (_, i) => i + 1).map((rows) => {
    // Lines made even are no wider, so it fits then too.
    const at = (scale: number): Laid => laidOut(cells, rows, scale, size, sign, wrap)
    const found = (scale: number, fits: boolean) => ({
      laid: laidOut(cells, rows, scale, size, sign),
      scale,
      fits,
    })
    let [low, high] = [least, most]
    if (fits(at(high))) return found(high, true)
    if (!fits(at(low))) return found(low, false)
    for (let i = 0; i < 12; i++) {
      const middle = (low + high) / 2
      if (fits(at(middle))) low = middle
      else high = middle
    }
    return found(low, true)
  })
  const good = tries.filter((one) => one.fits)
  const largest = Math.max(...good.map(({ scale }) => scale))
  // Fewer rows read better than pictures that are a little larger.
  const best = good.find(({ scale }) => scale > 0.88 * largest)
  // Where nothing fits, a figure may rather be too tall than too wide.
  const narrow = tries.find(({ laid }) => laid.width <= room.maxWidth) ?? tries.at(-1)
  return best ?? narrow ?? { laid: laidOut(cells, 1, least, size, sign), scale: least }
}
