import writeWorkbook, { type Row } from 'write-excel-file/node'
import type { Wording } from '../wording/wording.ts'
import { standsBehind } from '../workshop/class/money-text.ts'
import type { Table, TableCell, TableColumn } from '../workshop/table.ts'
import { headOf } from '../workshop/table-csv.ts'
import { workbookMark } from './workbook-mark.ts'

/** Columns are no narrower and no wider than this, in characters; longer text goes on below itself. */
const narrowest = 7
const widest = 48

/**
 * A workbook (XLSX, ECMA-376) with a sheet for each table: a line of title, a bold row of heads, both of which stay in
 * sight, and numbers that can be reckoned with. Text stays text, whatever it begins with.
 *
 * @param title of the workbook.
 * @param wording decides where the sign of the money stands; decimal signs are those of whoever opens the file.
 */
export async function workbook(
  title: string,
  tables: readonly Table[],
  wording: Pick<Wording, 'locale'>,
): Promise<Uint8Array> {
  const sheets = tables.map((table) => ({
    sheet: table.name,
    data: [titleRow(table), headRow(table), ...table.rows.map((row) => bodyRow(row, table, wording))],
    columns: table.columns.map((column, i) => ({ width: widthOf(column, i, table) })),
    stickyRowsCount: 2,
    orientation: 'landscape' as const,
  }))
  const written = await writeWorkbook(sheets, { features: [workbookMark(title)] }).toBuffer()
  return new Uint8Array(written)
}

const plainText = { type: String, format: '@', alignVertical: 'top' } as const

const titleRow = ({ title }: Table): Row => [{ ...plainText, value: title, fontWeight: 'bold', fontSize: 14 }]

const headRow = ({ columns, currency = '' }: Table): Row =>
  columns.map((column) => ({
    ...plainText,
    value: headOf(column, currency),
    fontWeight: 'bold',
    wrap: true,
    align: column.kind === 'text' ? 'left' : 'right',
    bottomBorderStyle: 'thin',
  }))

const bodyRow = (
  row: readonly TableCell[],
  { columns, currency = '' }: Table,
  wording: Pick<Wording, 'locale'>,
): Row =>
  row.map((cell, i) => {
    const kind = columns[i]?.kind ?? 'text'
    if (cell === undefined || cell === '') return null
    if (typeof cell === 'string') return { ...plainText, value: cell, wrap: cell.length > widest - 2 }
    const number = { type: Number, alignVertical: 'top' } as const
    if (kind === 'money') return { ...number, value: cell, format: moneyFormat(currency, wording) }
    // A time of day is a part of a day.
    if (kind === 'time') return { ...number, value: cell / (24 * 60), format: 'hh:mm' }
    return { ...number, value: cell }
  })

/** An amount with its sign or word, as `moneyText` has it. */
function moneyFormat(currency: string, wording: Pick<Wording, 'locale'>): string {
  const sign = currency.replaceAll('"', '')
  if (sign === '') return '#,##0.00'
  return standsBehind(sign, wording) ? `#,##0.00" ${sign}"` : `"${sign}"#,##0.00`
}

/** Wide enough for what stands in a column. */
function widthOf(column: TableColumn, i: number, { rows, currency = '' }: Table): number {
  const head = headOf(column, currency)
  // A long head goes on below itself at a space.
  const words = head.split(' ').map((word) => word.length)
  const cells = rows.map((row) => shown(row[i], column, currency).length)
  const longest = cells.reduce((most, n) => Math.max(most, n), Math.max(...words, Math.min(head.length, 14)))
  return Math.min(widest, Math.max(narrowest, longest + 2))
}

const shown = (cell: TableCell, { kind }: TableColumn, currency: string): string => {
  if (cell === undefined) return ''
  if (typeof cell === 'string') return cell
  return kind === 'money'
    ? `${currency}${cell.toFixed(2)}`
    : kind === 'time'
      ? '00:00'
      : String(cell).slice(0, 10)
}
