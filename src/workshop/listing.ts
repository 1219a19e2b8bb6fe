/** What a column holds: words, a measure such as `5 7/8 in`, or a count or an amount of money, which stand to the right. */
export interface Column {
  readonly head: string
  readonly kind: 'words' | 'measure' | 'count' | 'amount'
  /** What a box to tick is called for those who do not see it; a column without has none. */
  readonly tick?: string
}

/** One table with a heading, and what is to be said below it. */
export interface Section {
  readonly heading: string
  readonly columns: readonly Column[]
  /** A cell for each column, empty where there is nothing to say. */
  readonly rows: readonly (readonly string[])[]
  readonly note?: string
}

/** A list for the workshop, told once; a terminal, a Markdown file and a page each print it their way. */
export interface Listing {
  readonly title: string
  /** One line under the title. */
  readonly intro: string
  readonly sections: readonly Section[]
}

export const words = (head: string): Column => ({ head, kind: 'words' })
export const measure = (head: string): Column => ({ head, kind: 'measure' })
export const count = (head: string): Column => ({ head, kind: 'count' })
export const amount = (head: string): Column => ({ head, kind: 'amount' })

/** A column in which some cells begin with a box to tick. */
export const ticks = (head: string, tick: string): Column => ({ head, kind: 'words', tick })

/** The box to tick, and how a cell begins that has one. */
export const box = '☐'
export const toTick = (text: string): string => (text === '' ? box : `${box} ${text}`)

/** The table without the columns that say nothing in any row. */
export function withoutEmptyColumns(section: Section): Section {
  const says = section.columns.map((_, i) => section.rows.some((row) => (row[i] ?? '') !== ''))
  const keep = <T>(list: readonly T[]): T[] => list.filter((_, i) => says[i])
  return { ...section, columns: keep(section.columns), rows: section.rows.map(keep) }
}
