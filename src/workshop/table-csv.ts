import { clockText } from './class/clock.ts'
import { csvOf } from './csv.ts'
import type { Table, TableCell, TableColumn } from './table.ts'

/** Tables as comma-separated values (RFC 4180), one below the other: plain numbers, and times such as `10:05`. */
export const tablesCsv = (tables: readonly Table[]): string =>
  csvOf(
    tables.map(({ columns, rows, currency = '' }) => [
      columns.map((column) => headOf(column, currency)),
      ...rows.map((row) => row.map((cell, i) => cellOf(cell, columns[i]))),
    ]),
  )

/** `cost, £`: the currency is said once. */
export const headOf = ({ head, kind }: TableColumn, currency: string): string =>
  kind === 'money' && currency !== '' ? `${head}, ${currency}` : head

function cellOf(cell: TableCell, column: TableColumn | undefined): string {
  if (cell === undefined) return ''
  return typeof cell === 'number' && column?.kind === 'time' ? clockText(cell) : String(cell)
}
