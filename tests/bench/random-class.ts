import { inches } from '../../src/length/length.ts'
import { sheetSize } from '../../src/length/paper.ts'
import type { OfferedSheet, WantedPiece } from '../../src/workshop/cutting/cutting.ts'

/** One stock of a class: its pieces, and the sheet they are cut from. */
export interface StockOfClass {
  readonly pieces: readonly WantedPiece[]
  readonly sheet: OfferedSheet
}

/**
 * A class as it might be: 4 to 30 people, two to six sorts of pieces of card sizes in eighths of an inch, on 12 × 12 in,
 * A4 or Letter. The same seed gives the same class.
 */
export function randomClass(seed: number): StockOfClass {
  const next = dice(seed)
  const size = [{ width: inches(12), height: inches(12) }, sheetSize('A4'), sheetSize('Letter')][next(3)]
  if (!size) throw new RangeError('A size of paper is missing')
  const people = 4 + next(27)
  const pieces = Array.from({ length: 2 + next(5) }, (_, i): WantedPiece => {
    const side = (from: number, to: number) => inches(from * 8 + next((to - from) * 8), 8)
    return {
      lesson: 'Quillhaven',
      name: `piece ${i}`,
      stock: 'card',
      size:
        next(2) === 0 ? { width: side(3, 8), height: side(3, 8) } : { width: side(1, 7), height: side(1, 4) },
      count: people * (1 + next(2)),
      turns: true,
    }
  })
  return { pieces, sheet: { stock: 'card', size } }
}

/** Whole numbers below `n`, the same ones for the same seed: a linear congruence (Numerical Recipes, 1992, from memory). */
function dice(seed: number): (n: number) => number {
  let state = seed
  return (n) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return Math.floor((state / 2 ** 32) * n)
  }
}
