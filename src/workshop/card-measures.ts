import Fraction from 'fraction.js'
import { type Score, scoresOf } from '../card/scores.ts'
import type { Structure } from '../card/structure.ts'
import { nearest } from '../length/grid.ts'
import { type Length, mm } from '../length/length.ts'

/** The score lines of one piece of a card. */
export function scoresOfPiece({ plates, hinges }: Structure, piece: string): Score[] {
  const own = new Set(plates.filter((p) => p.piece === piece).map((p) => p.name))
  return scoresOf(hinges.filter((h) => own.has(h.between[0])))
}

/** A length that was solved for, in mm, at the nearest mark of the ruler. */
export const atMark = (millimetres: number, grid: Length): Length =>
  nearest(mm(new Fraction(millimetres)), grid)
