import { inches, mm, type Size } from '../../../src/length/length.ts'
import type { OfferedSheet, WantedPiece } from '../../../src/workshop/cutting/cutting.ts'

/** Width and height, exactly, in millimetres or inches. */
export const size = (width: number, height: number, unit = 'mm'): Size =>
  unit === 'in' ? { width: inches(width), height: inches(height) } : { width: mm(width), height: mm(height) }

export const piece = (
  name: string,
  width: number,
  height: number,
  count: number,
  more: Partial<WantedPiece> = {},
): WantedPiece => ({
  lesson: 'Harbour',
  name,
  stock: 'card',
  size: size(width, height),
  count,
  turns: true,
  ...more,
})

export const sheet = (width: number, height: number, more: Partial<OfferedSheet> = {}): OfferedSheet => ({
  stock: 'card',
  size: size(width, height),
  ...more,
})

/** Pieces of a published instance: width, height, count. */
export const piecesOf = (list: readonly (readonly number[])[], turns: boolean): WantedPiece[] =>
  list.map(([width = 0, height = 0, count = 1], i) => piece(`piece ${i}`, width, height, count, { turns }))
