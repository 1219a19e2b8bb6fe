/**
 * A column of a table for a spreadsheet. Numbers are plain, so that they can be reckoned with: what they are in stands
 * in the head or in a column of its own.
 */
export interface TableColumn {
  readonly head: string
  /** `money` is in the currency of its table; `time` is minutes after midnight. */
  readonly kind: 'text' | 'number' | 'money' | 'time'
}

/** Empty where there is nothing to say. */
export type TableCell = string | number | undefined

/** One table for a spreadsheet: a file of comma-separated values has them below each other, a workbook a sheet for each. */
export interface Table {
  /** Short, such as `To buy`. */
  readonly name: string
  /** One line over a sheet. */
  readonly title: string
  readonly columns: readonly TableColumn[]
  /** A cell for each column. */
  readonly rows: readonly (readonly TableCell[])[]
  /** Of its money. */
  readonly currency?: string
}

export const text = (head: string): TableColumn => ({ head, kind: 'text' })
export const number = (head: string): TableColumn => ({ head, kind: 'number' })
export const money = (head: string): TableColumn => ({ head, kind: 'money' })
export const time = (head: string): TableColumn => ({ head, kind: 'time' })

/** The tables that say something, without the columns that are empty in every row. */
export const withoutEmpty = (tables: readonly Table[]): Table[] =>
  tables
    .filter(({ rows }) => rows.length > 0)
    .map((table) => {
      const says = table.columns.map((_, i) => table.rows.some((row) => (row[i] ?? '') !== ''))
      const keep = <T>(list: readonly T[]): T[] => list.filter((_, i) => says[i])
      return { ...table, columns: keep(table.columns), rows: table.rows.map(keep) }
    })
