import type { Wording } from '../wording/wording.ts'
import { csvOf } from './csv.ts'
import type { ChartColumn, SizeChart } from './size-chart.ts'

/**
 * A chart as comma-separated values (RFC 4180), a column for each size and unit. Measures are text with their unit: a
 * spreadsheet takes a bare `3/4` for a day in April.
 */
export function sizeChartCsv({ blocks, wording }: SizeChart): string {
  const tables = blocks.map(({ card, columns, groups }) => [
    [
      wording.say('chart.card-column'),
      wording.say('chart.piece'),
      wording.say('chart.number-column'),
      wording.say('chart.note-column'),
      wording.say('chart.what-column'),
      ...columns.map((column) => headOf(column, wording)),
    ],
    ...groups.flatMap(({ kind, names, count, note, rows }) =>
      rows.map(({ what, cells }) => [
        card,
        wording.list(names),
        kind === 'piece' ? String(count) : '',
        note,
        what || wording.say(kind === 'card' ? 'chart.size' : 'chart.cut-to'),
        ...cells.map((text, i) => cellOf(text, columns[i], wording)),
      ]),
    ),
  ])
  // Cards with other columns follow below an empty line.
  return csvOf(tables)
}

function headOf({ label, unit, works }: ChartColumn, wording: Wording): string {
  const size = wording.say('chart.column-in', { unit, size: label })
  return works ? size : wording.say('chart.fails-short', { size })
}

const cellOf = (text: string, column: ChartColumn | undefined, { say }: Wording): string =>
  /\d/.test(text) && column
    ? say('measures.with-unit', { number: text, unit: say(`measures.${column.unit}`) })
    : text
