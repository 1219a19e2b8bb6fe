import type { Wording } from '../wording/wording.ts'
import { type Listing, measure, type Section, words } from './listing.ts'
import type { ChartBlock, SizeChart } from './size-chart.ts'
import { type ChartGroup, type ChartRow, groupNote } from './size-chart-rows.ts'

/** A chart as tables, one for each card and unit, for a terminal and for Markdown. */
export function sizeChartListing(chart: SizeChart): Listing {
  const { title, wording, units, blocks, notes } = chart
  const tables = blocks.flatMap((block) =>
    units.map((unit): Section => {
      const own = block.columns.flatMap((column, i) => (column.unit === unit ? [{ column, i }] : []))
      return {
        heading:
          blocks.length > 1
            ? wording.say('chart.unit-of', { unit, card: block.card })
            : wording.say('chart.unit', { unit }),
        columns: [words(wording.say('chart.piece')), ...own.map(({ column }) => measure(column.label))],
        rows: rowsOf(block, wording).map(({ name, cells }) => [name, ...own.map(({ i }) => cells[i] || '–')]),
      }
    }),
  )
  const below = [...notes, ...reasons(chart)].join(' ')
  return {
    title: wording.say('chart.title', { title }),
    intro: '',
    sections: tables.map((table, i) => (i === tables.length - 1 ? { ...table, note: below } : table)),
  }
}

/** Why sizes do not work, as sentences. */
export const reasons = ({ findings }: SizeChart): string[] =>
  findings
    .filter(({ severity }) => severity === 'error')
    .map(({ message, suggestion }) =>
      [message, ...(suggestion ? [suggestion] : [])].map((text) => `${text}.`).join(' '),
    )

export const rowsOf = (
  { groups }: ChartBlock,
  wording: Wording,
): { name: string; cells: ChartRow['cells'] }[] =>
  groups.flatMap((group) =>
    group.rows.map((row) => ({ name: rowName(group, row, wording), cells: row.cells })),
  )

/** `base (white card)`, `base: mountain, from the left edge`. */
function rowName(group: ChartGroup, { what }: ChartRow, wording: Wording): string {
  const [name, note] = [wording.list(group.names), groupNote(group, wording)]
  if (what !== '') return wording.say('chart.row', { name, what })
  return note === '' ? name : wording.say('chart.row-note', { name, note })
}
