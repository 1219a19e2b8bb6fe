import { tongueFor } from '../wording/tongue.ts'
import type { Wording } from '../wording/wording.ts'
import { clockText } from './class/clock.ts'
import { csvOf } from './csv.ts'
import type { Table, TableCell, TableColumn } from './table.ts'

/**
 * Tables as comma-separated values (RFC 4180), one below the other: plain numbers, and times such as `10:05`. In a
 * language with decimal commas these stand in the numbers, and semicolons between the cells, as its spreadsheets read
 * such files (common practice, no source).
 */
export function tablesCsv(tables: readonly Table[], { locale }: Pick<Wording, 'locale'>): string {
  const { pointed } = tongueFor(locale)
  return csvOf(
    tables.map(({ columns, rows, currency = '' }) => [
      columns.map((column) => headOf(column, currency)),
      ...rows.map((row) => row.map((cell, i) => cellOf(cell, columns[i], pointed))),
    ]),
    pointed('0.5').includes(',') ? ';' : ',',
  )
}

/** `cost, £`: the currency is said once. */
export const headOf = ({ head, kind }: TableColumn, currency: string): string =>
  kind === 'money' && currency !== '' ? `${head}, ${currency}` : head

function cellOf(cell: TableCell, column: TableColumn | undefined, pointed: (text: string) => string): string {
  if (cell === undefined) return ''
  if (typeof cell === 'string') return cell
  return column?.kind === 'time' ? clockText(cell) : pointed(String(cell))
}
