import type { Card } from '../card/card.ts'
import type { Fold, Piece } from '../card/structure.ts'
import { type FlatParts, flatParts } from './flat/parts.ts'
import { type Flat, flatLine } from './plane.ts'
import { type Cell, canvas, cutPen } from './sketch-canvas.ts'

/** A valley is a dashed line, as in every figure; a mountain the other upright mark of a keyboard. */
const creasePens: Readonly<Record<Fold, string>> = { valley: ':', mountain: '!' }

/** How a sketch is to be read. */
export const sketchLegend =
  '| and - are cut, : is a valley, ! a mountain, with the inside up; what is too narrow to draw is drawn wider'

/** A character of a terminal is about twice as high as it is wide. */
const rowPerColumn = 2

/** Pieces drawn in plain characters. */
export interface Sketch {
  readonly rows: readonly string[]
  /** Those for which there was no room. */
  readonly left: readonly Piece[]
}

/** The room a sketch may take, in characters; its names stand below. */
export interface SketchRoom {
  readonly columns: number
  readonly rows: number
}

/**
 * The flat pieces of a card side by side, all to one scale, their edges, slits and creases in characters. Lines that
 * would fall on one another are moved apart, so narrow panels come out too wide. With several pieces their names stand below.
 */
export function sketchPieces(card: Card, pieces: readonly Piece[], room: SketchRoom): Sketch {
  const parts = pieces.map((piece) => flatParts(card, piece))
  const named = parts.length > 1 || parts.some(({ piece }) => piece.count > 1)
  for (let shown = parts.length; shown > 0; shown--) {
    const some = parts.slice(0, shown)
    for (let scale = leastScale(some, room), i = 0; i < mostTrials; i++, scale *= 1.06) {
      const drawn = some.map((part) => sketchPiece(part, scale, room.rows))
      const rows = sideBySide(drawn, named ? some.map(({ piece }) => labelOf(piece)) : [])
      if (widthOf(rows) <= room.columns) return { rows, left: pieces.slice(shown) }
    }
  }
  return { rows: [], left: pieces }
}

/** From the scale at which the room is filled to one at which only the room between lines is left. */
const mostTrials = 50

/** Millimetres in a column when pieces without crowded lines just fit. */
function leastScale(parts: readonly FlatParts[], { columns, rows }: SketchRoom): number {
  const wide = parts.reduce((sum, { piece }) => sum + piece.size.width.valueOf(), 0)
  const high = Math.max(...parts.map(({ piece }) => piece.size.height.valueOf()))
  return Math.max(wide / columns, high / (rowPerColumn * Math.max(1, rows - 1)))
}

function sketchPiece(parts: FlatParts, scale: number, mostRows: number): string[] {
  const creases = parts.creases.map(({ line, fold }) => ({ ends: flatLine(line), pen: creasePens[fold] }))
  const loops = [...parts.outline, ...parts.holes]
  const edges = loops.flatMap((loop) =>
    loop.map((p, i): [Flat, Flat] => [p, loop[(i + 1) % loop.length] ?? p]),
  )
  const all = [...creases.map(({ ends }) => ends), ...parts.slits, ...edges].flat()
  const height = Math.max(...all.map(([, y]) => y))
  const columns = marks(
    all.map(([x]) => x),
    scale,
    2,
  )
  const downs = all.map(([, y]) => height - y)
  const roomy = marks(downs, scale * rowPerColumn, 2)
  const fits = Math.max(...roomy.values()) < mostRows
  const rows = fits ? roomy : marks(downs, scale * rowPerColumn, 1)
  const cell = ([x, y]: Flat): Cell => [columns.get(key(x)) ?? 0, rows.get(key(height - y)) ?? 0]
  const page = canvas()
  for (const { ends, pen } of creases) page.line(cell(ends[0]), cell(ends[1]), pen)
  for (const [from, to] of [...parts.slits, ...edges]) page.line(cell(from), cell(to), cutPen)
  for (const corner of [...parts.slits.flat(), ...edges.flat()]) page.line(cell(corner), cell(corner), '+')
  return page.rows()
}

/** The same place twice is one mark, whatever floats make of it. */
const key = (x: number): number => Math.round(x * 1e6)

/** The column or row of each place, in their order and at least `apart` from one another. */
function marks(places: readonly number[], scale: number, apart: number): Map<number, number> {
  const found = new Map<number, number>()
  let last = -apart
  for (const place of [...new Set(places.map(key))].sort((a, b) => a - b)) {
    last = Math.max(last + apart, Math.round(place / 1e6 / scale))
    found.set(place, last)
  }
  return found
}

const labelOf = ({ name, count }: Piece): string => (count > 1 ? `${count} × ${name}` : name)

/** Blocks of lines beside each other, standing on one line, each with its label below. */
function sideBySide(blocks: readonly (readonly string[])[], labels: readonly string[]): string[] {
  const high = Math.max(...blocks.map((block) => block.length))
  const columns = blocks.map((block, i) => {
    const rows = [
      ...Array.from({ length: high - block.length }, () => ''),
      ...block,
      ...(labels[i] ? [labels[i]] : []),
    ]
    const width = widthOf(rows)
    return rows.map((row) => row.padEnd(width))
  })
  return (columns[0] ?? []).map((_, i) =>
    columns
      .map((rows) => rows[i] ?? '')
      .join('  ')
      .trimEnd(),
  )
}

const widthOf = (rows: readonly string[]): number => Math.max(0, ...rows.map((row) => row.length))
