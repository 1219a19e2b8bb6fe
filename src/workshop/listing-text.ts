import type { Column, Listing, Section } from './listing.ts'

/** A list as plain text for a terminal: columns stand under each other, two spaces apart. Ends with a newline. */
export function listingText({ title, intro, sections }: Listing): string {
  const head = [title, intro].filter((line) => line !== '')
  return `${[head.join('\n'), ...sections.map(sectionText)].join('\n\n')}\n`
}

function sectionText({ heading, columns, rows, note }: Section): string {
  const table = [columns.map((c) => c.head), ...rows]
  const widths = columns.map((_, i) => Math.max(...table.map((row) => widthOf(row[i] ?? ''))))
  const lines = table.map(
    (row) => `  ${columns.map((c, i) => cell(row[i] ?? '', c, widths[i] ?? 0)).join('  ')}`,
  )
  return [heading, ...lines.map((line) => line.trimEnd()), ...(note ? [`  ${note}`] : [])].join('\n')
}

function cell(text: string, { kind }: Column, width: number): string {
  const space = ' '.repeat(width - widthOf(text))
  return kind === 'count' ? space + text : text + space
}

/** Columns that a text takes in a terminal: one for each character that is not a combining mark. */
const widthOf = (text: string): number => [...text.replaceAll(/\p{Mark}/gu, '')].length
