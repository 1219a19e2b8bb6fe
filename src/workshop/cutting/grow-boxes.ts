import type { Box } from '../fit/cutting/boxes.ts'
import { joined, pieceBox } from './choice.ts'
import { type Grid, placeOf } from './grid.ts'
import { Heap } from './heap.ts'
import type { Table } from './most-value.ts'
import { outsideValue } from './outside.ts'
import type { Problem, Shape } from './problem.ts'

/** A sheet, with what its pieces are worth and the most that its sizes hold of any number of them. */
export interface Valued {
  readonly shape: Shape
  readonly grid: Grid
  readonly values: readonly number[]
  readonly table: Table
}

/** A box with what is in it. */
export interface Part extends Box {
  readonly value: number
  readonly counts: readonly number[]
}

/** How far the boxes are grown. */
export interface Growth {
  /** Boxes that cannot become part of a sheet worth more than this are dropped; it may rise on the way. */
  readonly above: () => number
  /** Sees every box that is kept. True to stop. */
  readonly visit: (part: Part) => boolean
  /** Pairs of boxes that are tried at most. */
  readonly pairs: number
}

export interface Grown {
  /** What is not grown yet could become part of no sheet worth more: minus infinity when all is grown. */
  readonly ceiling: number
  readonly pairs: number
}

/**
 * Puts boxes together of boxes, with no more of each piece than are wanted, the most promising first: each has the value
 * it holds and the most that the rest of the sheet can still give (Viswanathan and Bagchi 1993; Cung, Hifi and Le Cun
 * 2000; see `outsideValue`). Of boxes with the same pieces only those are kept that no other fits into.
 */
export function growBoxes(
  { shape, grid, values, table }: Valued,
  { counts: limits, areas }: Pick<Problem, 'counts' | 'areas'>,
  { above, visit, pairs: mostPairs }: Growth,
): Grown {
  const outside = outsideValue(grid, table)
  const fill = filling(values, areas, limits)
  const rows = grid.up.sizes.length
  const open = new Heap()
  const parts: Part[] = []
  const closed: Part[] = []
  const seen = new Map<string, { width: number; height: number }[]>()
  let pairs = 0
  let stop = false
  /** What could still become of the box that is being joined to others. */
  let promise = Number.POSITIVE_INFINITY

  const offer = (box: Box, counts: readonly number[], value: number): void => {
    const { width, height, made } = box
    const [i, j] = [placeOf(width, grid.across), placeOf(height, grid.up)]
    const beyond = i < 0 || j < 0 ? (table.best.at(-1) ?? 0) : (outside[i * rows + j] ?? 0)
    const paper = shape.width * shape.height - width * height
    const most = value + Math.min(beyond, Math.floor(fill(counts, paper)))
    if (most <= above()) return
    const key = String.fromCharCode(...counts)
    const alike = seen.get(key) ?? []
    if (alike.some((other) => other.width <= width && other.height <= height)) return
    seen.set(key, [...alike, { width, height }])
    const part = { width, height, counts, value, made }
    open.push(most, parts.push(part) - 1)
    stop = visit(part)
  }
  for (const way of shape.ways) {
    if ((limits[way.kind] ?? 0) < 1 || stop) continue
    const counts = limits.map((_, kind) => Number(kind === way.kind))
    offer(pieceBox(way), counts, values[way.kind] ?? 0)
  }
  while (open.top > above() && pairs < mostPairs && !stop) {
    promise = open.top
    const part = parts[open.pop() ?? 0]
    if (!part) break
    closed.push(part)
    for (const other of closed) {
      if (stop) break
      pairs++
      const beside = part.width + other.width <= shape.width
      const stacked = part.height + other.height <= shape.height
      if (!beside && !stacked) continue
      if (!part.counts.every((count, kind) => count + (other.counts[kind] ?? 0) <= (limits[kind] ?? 0)))
        continue
      const counts = part.counts.map((count, kind) => count + (other.counts[kind] ?? 0))
      if (beside) offer(joined(part, other, 'beside'), counts, part.value + other.value)
      if (stacked && !stop) offer(joined(part, other, 'above'), counts, part.value + other.value)
    }
  }
  const ceiling = stop ? Math.max(promise, open.top) : open.top
  return { ceiling: ceiling > above() || stop ? ceiling : Number.NEGATIVE_INFINITY, pairs }
}

/** The most that the pieces that are left over could be worth on so much paper, were they sand. */
function filling(
  values: readonly number[],
  areas: readonly number[],
  limits: readonly number[],
): (counts: readonly number[], paper: number) => number {
  const order = [...values.keys()].sort(
    (a, b) => (values[b] ?? 0) * (areas[a] ?? 0) - (values[a] ?? 0) * (areas[b] ?? 0) || a - b,
  )
  return (counts, paper) => {
    let [value, left] = [0, paper]
    for (const kind of order) {
      const area = areas[kind] ?? 0
      const count = (limits[kind] ?? 0) - (counts[kind] ?? 0)
      if (count * area >= left) return value + ((values[kind] ?? 0) * left) / area + 1
      value += count * (values[kind] ?? 0)
      left -= count * area
    }
    return value
  }
}
