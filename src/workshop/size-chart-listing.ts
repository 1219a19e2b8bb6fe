import { listOf } from '../length/finding.ts'
import { type Listing, measure, type Section, words } from './listing.ts'
import { type ChartBlock, type SizeChart, unitHead } from './size-chart.ts'
import { type ChartGroup, type ChartRow, groupNote } from './size-chart-rows.ts'

/** A chart as tables, one for each card and unit, for a terminal and for Markdown. */
export function sizeChartListing(chart: SizeChart): Listing {
  const { title, units, blocks, notes } = chart
  const tables = blocks.flatMap((block) =>
    units.map((unit): Section => {
      const own = block.columns.flatMap((column, i) => (column.unit === unit ? [{ column, i }] : []))
      return {
        heading: blocks.length > 1 ? `${unitHead[unit]} (${block.card})` : unitHead[unit],
        columns: [words('piece'), ...own.map(({ column }) => measure(column.label))],
        rows: rowsOf(block).map(({ name, cells }) => [name, ...own.map(({ i }) => cells[i] || '–')]),
      }
    }),
  )
  const below = [...notes, ...reasons(chart)].join(' ')
  return {
    title: `Size chart: ${title}`,
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

const rowsOf = ({ groups }: ChartBlock): { name: string; cells: ChartRow['cells'] }[] =>
  groups.flatMap((group) => group.rows.map((row) => ({ name: rowName(group, row), cells: row.cells })))

/** `base (white card)`, `base: mountain, from the left edge`. */
function rowName(group: ChartGroup, { what }: ChartRow): string {
  const [name, note] = [listOf(group.names), groupNote(group)]
  if (what !== '') return `${name}: ${what}`
  return note === '' ? name : `${name} (${note})`
}
