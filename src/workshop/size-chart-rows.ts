import { listOf } from '../length/finding.ts'
import { groupBy } from '../length/group-by.ts'
import type { Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import { type ChartLine, chartLines } from './size-chart-lines.ts'

/** One row: what is measured, and its numbers in each column, without their unit. */
export interface ChartRow {
  /** Empty for the size that the piece is cut to. */
  readonly what: string
  /** Empty where a size does not work, or has no such thing. */
  readonly cells: readonly string[]
}

/** What belongs to one piece, or to several that are alike in every size. */
export interface ChartGroup {
  readonly kind: ChartLine['kind']
  readonly names: readonly string[]
  /** How many of each are cut. */
  readonly count: number
  readonly note: string
  readonly rows: readonly ChartRow[]
}

interface Row {
  readonly line: ChartLine
  readonly cells: string[]
}

/**
 * The rows of a card's chart, by piece.
 *
 * @param columns the card in each column; missing where it does not work.
 */
export function chartGroups(columns: readonly (readonly [ProvenCard | undefined, Unit])[]): ChartGroup[] {
  const rows = allRows(columns)
  const byOwner = groupBy(rows, ({ line: { kind, owner, count, note } }) =>
    JSON.stringify([kind, owner, count, note]),
  )
  const groups = [...byOwner.values()].map(groupOf)
  const alike = groupBy(groups, (group) => JSON.stringify([group.kind, group.count, group.rows]))
  return [...alike.values()].flatMap(([first, ...more]) =>
    first
      ? [{ ...first, names: [first, ...more].flatMap(({ names }) => names), note: noteOf([first, ...more]) }]
      : [],
  )
}

/** A row for each thing that any column has, where the first that has it says. */
function allRows(columns: readonly (readonly [ProvenCard | undefined, Unit])[]): Row[] {
  const rows: Row[] = []
  const places = new Map<string, Row>()
  for (const [i, [card, unit]] of columns.entries()) {
    let before = -1
    for (const line of card ? chartLines(card, unit) : []) {
      const key = JSON.stringify([line.kind, line.owner, line.count, line.note, line.what, line.from])
      let row = places.get(key)
      if (!row) {
        row = { line, cells: columns.map(() => '') }
        places.set(key, row)
        rows.splice(before + 1, 0, row)
      }
      before = rows.indexOf(row)
      row.cells[i] = line.text
    }
  }
  return rows
}

function groupOf(rows: readonly Row[]): ChartGroup {
  const [first] = rows
  const merged = groupBy(rows, ({ line, cells }) => JSON.stringify([line.what, cells]))
  return {
    kind: first?.line.kind ?? 'piece',
    names: [first?.line.owner ?? ''],
    count: first?.line.count ?? 1,
    note: first?.line.note ?? '',
    rows: [...merged.values()]
      .map((some) => ({ what: whatOf(some.map(({ line }) => line)), cells: some[0]?.cells ?? [] }))
      .filter(
        ({ what, cells }) => what !== 'made as' || new Set(cells.filter((text) => text !== '')).size > 1,
      ),
  }
}

/** `mountain, from the left edge`; the same marks on both edges are told once. */
function whatOf(lines: readonly ChartLine[]): string {
  const edges = lines.flatMap(({ from }) => (from ? [`the ${from}`] : []))
  const what = lines[0]?.what ?? ''
  return edges.length > 0 ? `${what}, from ${listOf(edges)} edge` : what
}

const noteOf = (groups: readonly ChartGroup[]): string => listOf([...new Set(groups.map(({ note }) => note))])

/** `4 of wave paper`: what stands behind the name of a piece. */
export const groupNote = ({ count, names, note }: ChartGroup): string =>
  count === 1 ? note : `${count} ${names.length > 1 ? 'each ' : ''}of ${note}`
