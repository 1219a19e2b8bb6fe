import type { Section } from './listing.ts'
import type { SizeChart } from './size-chart.ts'
import { sizeChartListing } from './size-chart-listing.ts'
import { terminalWidth, widthOf, wrapText } from './text-columns.ts'

/** The names of pieces and scores go on below themselves beyond this. */
const nameWidth = 24
/** A column is never narrower than a size in sixteenths. */
const leastWidth = 14

/** A chart as plain text for a terminal, a table for each unit, long cells going on below themselves. */
export function sizeChartText(chart: SizeChart): string {
  const { title, sections } = sizeChartListing(chart)
  return `${[title, ...sections.map(tableText)].join('\n\n')}\n`
}

function tableText({ heading, columns, rows, note }: Section): string {
  const each = Math.max(leastWidth, Math.floor((terminalWidth - nameWidth - 2) / (columns.length - 1)) - 2)
  const widths = columns.map((_, i) => (i === 0 ? nameWidth : each))
  const lines = [columns.map(({ head }) => head), ...rows].flatMap((row) => rowLines(row, widths))
  const below = note ? ['', ...wrapText(note, terminalWidth - 2).map((line) => `  ${line}`)] : []
  return [heading, ...lines, ...below].join('\n')
}

function rowLines(row: readonly string[], widths: readonly number[]): string[] {
  const cells = row.map((text, i) => wrapText(kept(text), widths[i] ?? leastWidth).map(freed))
  const height = Math.max(...cells.map((cell) => cell.length))
  return Array.from({ length: height }, (_, line) =>
    `  ${cells.map((cell, i) => padded(cell[line] ?? '', widths[i] ?? 0)).join('  ')}`.trimEnd(),
  )
}

const padded = (text: string, width: number): string => text + ' '.repeat(Math.max(0, width - widthOf(text)))

/** A whole number stays with its fraction, and width with height. */
const kept = (text: string): string =>
  text.replace(/ × /g, '\u00a0×\u00a0').replace(/(\d) (?=\d+\/\d)/g, '$1\u00a0')
const freed = (text: string): string => text.replaceAll('\u00a0', ' ')
