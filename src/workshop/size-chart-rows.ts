import { groupBy } from '../length/group-by.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'
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
export function chartGroups(
  columns: readonly (readonly [ProvenCard | undefined, Wording])[],
  wording: Wording,
): ChartGroup[] {
  const rows = allRows(columns)
  const byOwner = groupBy(rows, ({ line: { kind, owner, count, note } }) =>
    JSON.stringify([kind, owner, count, note]),
  )
  const groups = [...byOwner.values()].map((some) => groupOf(some, wording))
  const alike = groupBy(groups, (group) => JSON.stringify([group.kind, group.count, group.rows]))
  return [...alike.values()].flatMap(([first, ...more]) =>
    first
      ? [
          {
            ...first,
            names: [first, ...more].flatMap(({ names }) => names),
            note: noteOf([first, ...more], wording),
          },
        ]
      : [],
  )
}

/** A row for each thing that any column has, where the first that has it says. */
function allRows(columns: readonly (readonly [ProvenCard | undefined, Wording])[]): Row[] {
  const rows: Row[] = []
  const places = new Map<string, Row>()
  for (const [i, [card, wording]] of columns.entries()) {
    let before = -1
    for (const line of card ? chartLines(card, wording) : []) {
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

function groupOf(rows: readonly Row[], wording: Wording): ChartGroup {
  const [first] = rows
  const merged = groupBy(rows, ({ line, cells }) => JSON.stringify([line.what, cells]))
  return {
    kind: first?.line.kind ?? 'piece',
    names: [first?.line.owner ?? ''],
    count: first?.line.count ?? 1,
    note: first?.line.note ?? '',
    rows: [...merged.values()]
      .filter(
        ([row]) => row?.line.what !== 'made as' || new Set(row.cells.filter((text) => text !== '')).size > 1,
      )
      .map((some) => ({
        what: whatOf(
          some.map(({ line }) => line),
          wording,
        ),
        cells: some[0]?.cells ?? [],
      })),
  }
}

/** `mountain, from the left edge`; the same marks on both edges are told once. */
function whatOf(lines: readonly ChartLine[], { say }: Wording): string {
  const edges = lines.flatMap(({ from }) => (from ? [from] : []))
  const from = edges.length > 1 ? 'both' : (edges[0] ?? 'left')
  const what = lines[0]?.what ?? 'cut to'
  switch (what) {
    case 'cut to':
      return ''
    case 'mountain':
    case 'valley':
    case 'scores':
      return say('chart.scores', { fold: what, from })
    case 'mountain on the slant':
    case 'valley on the slant':
      return say('chart.slants', { fold: what === 'valley on the slant' ? 'valley' : 'mountain' })
    default:
      return say(whatKeys[what])
  }
}

const whatKeys = {
  letters: 'chart.letters',
  gap: 'chart.gap',
  'first score': 'chart.first-score',
  inside: 'chart.inside',
  'made as': 'chart.made-as',
} as const

const noteOf = (groups: readonly ChartGroup[], wording: Wording): string =>
  wording.list([...new Set(groups.map(({ note }) => note))])

/** `4 of wave paper`: what stands behind the name of a piece. */
export function groupNote({ count, names, note }: ChartGroup, wording: Wording): string {
  if (count === 1) return note
  return wording.say(names.length > 1 ? 'chart.each-of-stock' : 'chart.of-stock', { count, stock: note })
}
