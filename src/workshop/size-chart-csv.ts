import { listOf } from '../length/finding.ts'
import { csvOf } from './csv.ts'
import type { ChartColumn, SizeChart } from './size-chart.ts'

/**
 * A chart as comma-separated values (RFC 4180), a column for each size and unit. Measures are text with their unit: a
 * spreadsheet takes a bare `3/4` for a day in April.
 */
export function sizeChartCsv({ blocks }: SizeChart): string {
  const tables = blocks.map(({ card, columns, groups }) => [
    ['card', 'piece', 'number', 'note', 'what', ...columns.map(headOf)],
    ...groups.flatMap(({ kind, names, count, note, rows }) =>
      rows.map(({ what, cells }) => [
        card,
        listOf(names),
        kind === 'piece' ? String(count) : '',
        note,
        what || (kind === 'card' ? 'size' : 'cut to'),
        ...cells.map((text, i) => cellOf(text, columns[i])),
      ]),
    ),
  ])
  // Cards with other columns follow below an empty line.
  return csvOf(tables)
}

const headOf = ({ label, unit, works }: ChartColumn): string =>
  `${label} in ${unit === 'in' ? 'inches' : 'millimetres'}${works ? '' : ' (does not work)'}`

const cellOf = (text: string, column: ChartColumn | undefined): string =>
  /\d/.test(text) && column ? `${text} ${column.unit}` : text
