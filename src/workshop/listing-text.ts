import type { Column, Listing, Section } from './listing.ts'
import { widthOf, wrapText } from './text-columns.ts'

/**
 * A list as plain text for a terminal: columns stand under each other, two spaces apart. Ends with a newline.
 *
 * @param width columns beyond which the last cell of a row goes on below itself; a row is one line unless it is given.
 */
export function listingText({ title, intro, sections }: Listing, width = Number.POSITIVE_INFINITY): string {
  const head = [title, ...wrapText(intro, width)].filter((line) => line !== '')
  return `${[head.join('\n'), ...sections.map((section) => sectionText(section, width))].join('\n\n')}\n`
}

/** A last column is never narrower than this, however far to the right it stands. */
const leastWidth = 24

/** One table of a list. */
export function sectionText({ heading, columns, rows, note }: Section, width: number): string {
  const table = [columns.map((c) => c.head), ...rows]
  const widths = columns.map((_, i) => Math.max(...table.map((row) => widthOf(row[i] ?? ''))))
  const lines = table.flatMap((row) => {
    const cells = columns.map((c, i) => cell(row[i] ?? '', c, widths[i] ?? 0))
    const before = cells.slice(0, -1).map((text) => `${text}  `)
    const start = 2 + widthOf(before.join(''))
    const [first = '', ...more] = wrapText(
      (cells.at(-1) ?? '').trimEnd(),
      Math.max(leastWidth, width - start),
    )
    return [`  ${before.join('')}${first}`, ...more.map((line) => ' '.repeat(start) + line)]
  })
  const below = note ? wrapText(note, width - 2).map((line) => `  ${line}`) : []
  return [heading, ...lines.map((line) => line.trimEnd()), ...below].join('\n')
}

function cell(text: string, { kind }: Column, width: number): string {
  const space = ' '.repeat(width - widthOf(text))
  return kind === 'count' || kind === 'amount' ? space + text : text + space
}
