import type { Card, Lettering } from '../card/card.ts'
import { advance } from './advance.ts'
import { label } from './label.ts'
import type { Mark } from './mark.ts'
import type { Spot } from './num.ts'
import { type Flat, toMm } from './plane.ts'

/** A letter of a lettering where it belongs on its piece, in mm of the flat piece, y upwards. */
interface SetLetter {
  readonly text: string
  /** The lower left corner of the room it has. */
  readonly corner: Flat
  readonly width: number
  readonly height: number
  /** Baseline, in the middle of its width. */
  readonly base: Flat
}

/** Shares of a letter's room that its own shape takes: cut letters nearly fill their width. */
const [acrossShare, upShare] = [0.9, 0.62]
const capitals = 0.713

/** The letterings on a piece. */
export const letteringOn = (card: Card, piece: string): Lettering[] =>
  card.lettering.filter((lettering) => lettering.on === piece)

/**
 * Letters set at their marks, half way up the strip, all of one size in mm.
 *
 * The mark is the letter's left edge; how high a letter is no lesson says, so it is as high as its width allows.
 */
export function setLetters(
  lettering: Lettering,
  stripHeight: number,
): { size: number; letters: SetLetter[] } {
  const widths = lettering.widths.map(toMm)
  const byWidth = lettering.letters.map((letter, i) => ((widths[i] ?? 0) * acrossShare) / advance(letter, 1))
  const size = Math.min((stripHeight * upShare) / capitals, ...byWidth)
  const high = size * capitals
  const letters = lettering.letters.map((text, i): SetLetter => {
    const [left, width] = [toMm(lettering.marks[i] ?? lettering.gap), widths[i] ?? 0]
    const low = (stripHeight - high) / 2
    return { text, corner: [left, low], width, height: high, base: [left + width / 2, low] }
  })
  return { size, letters }
}

/** A letter drawn flat, its baseline's middle at `at`. */
export const letterMark = (text: string, at: Spot, size: number): Mark =>
  label(text, at, { class: 'letter', size, bold: true, anchor: 'middle' })
