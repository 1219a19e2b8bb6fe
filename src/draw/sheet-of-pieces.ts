import type { CutLines, Path } from './cut-lines.ts'
import type { Flat } from './plane.ts'

/** Pieces lie so far apart, in mm: a machine and a hand need room between them. */
const gap = 10
/** A row is as wide as this, in mm, unless one piece alone is wider. From a sheet of 12 in. */
const row = 305

/** One piece in its place on a sheet. */
export interface Placed {
  readonly piece: CutLines
  /** Its lower left corner. */
  readonly at: Flat
}

/** Pieces laid out beside each other, y upwards from the lower left corner. */
export interface SheetOfPieces {
  readonly width: number
  readonly height: number
  readonly placed: readonly Placed[]
}

/** Every piece of a card as often as it is needed, in rows, the first row at the top. */
export function laidOut(pieces: readonly CutLines[]): SheetOfPieces {
  const widest = Math.max(row, ...pieces.map(({ width }) => width))
  const rows: { piece: CutLines; x: number }[][] = []
  let next = Number.POSITIVE_INFINITY
  for (const piece of pieces.flatMap((one) => Array.from({ length: one.count }, () => one))) {
    if (next + piece.width > widest) {
      rows.push([])
      next = 0
    }
    rows.at(-1)?.push({ piece, x: next })
    next += piece.width + gap
  }
  const heights = rows.map((own) => Math.max(...own.map(({ piece }) => piece.height)))
  const height = heights.reduce((sum, h) => sum + h, 0) + gap * Math.max(0, rows.length - 1)
  let top = height
  const placed = rows.flatMap((own, i) => {
    const base = top - (heights[i] ?? 0)
    top = base - gap
    return own.map(({ piece, x }): Placed => ({ piece, at: [x, base] }))
  })
  const width = Math.max(...placed.map(({ piece, at }) => at[0] + piece.width))
  return { width, height, placed }
}

/** One piece alone. */
export const alone = (piece: CutLines): SheetOfPieces => ({
  width: piece.width,
  height: piece.height,
  placed: [{ piece, at: [0, 0] }],
})

/** A path of a piece where it lies on the sheet. */
export const moved = ({ spots, closed }: Path, [dx, dy]: Flat): Path => ({
  spots: spots.map(([x, y]): Flat => [x + dx, y + dy]),
  closed,
})
