import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { hasErrors } from '../../src/length/finding.ts'
import { type Length, plus, type Unit } from '../../src/length/length.ts'
import { readLength, readSize } from '../../src/length/text.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { type CardJson, measures } from '../../src/workshop/measures.ts'
import { type SizeChart, sizeChart } from '../../src/workshop/size-chart.ts'
import { sizeChartCsv } from '../../src/workshop/size-chart-csv.ts'
import { sizeChartJson } from '../../src/workshop/size-chart-json.ts'
import { sizeChartText } from '../../src/workshop/size-chart-text.ts'

const folder = new URL('../../lessons/', import.meta.url)
const lessons = readdirSync(folder).filter((name) => name.endsWith('.md'))
const textOf = (name: string): string => readFileSync(new URL(name, folder), 'utf8')
const chartOf = (text: string, units: readonly Unit[] = ['in', 'mm']): SizeChart => {
  const lesson = readLesson(text)
  return sizeChart(lesson, fillLesson(lesson), units)
}

/** The numbers of a cell in mm: `3/4, 7 3/4 (1 to 2)` in the order in which they stand. */
const numbers = (cell: string, unit: Unit): number[] =>
  [...cell.matchAll(/\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?/g)].map(([n]) =>
    readLength(`${n} ${unit}`).valueOf(),
  )
const round = (x: number): number => Math.round(x * 1e4) / 1e4
const sorted = (list: readonly number[]): number[] => [...new Set(list.map(round))].sort((a, b) => a - b)

/** What an independent print of one size and unit says of the pieces, lettering and envelope by name. */
function said({ pieces, lettering, envelope, closed }: CardJson): Map<string, number[]> {
  const of = ({ width, height }: { width: { mm: number }; height: { mm: number } }) => [width.mm, height.mm]
  return new Map<string, number[]>([
    ['shut card', of(closed)],
    ...pieces.map((piece): [string, number[]] => [
      piece.name,
      [
        ...of(piece),
        ...piece.scores.flatMap(({ at, along, from, to }) => {
          const across = along === 'width' ? piece.height : piece.width
          return from.mm === 0 && to.mm === across.mm ? [at.mm] : [at.mm, from.mm, to.mm]
        }),
      ],
    ]),
    ...lettering.map((l): [string, number[]] => [l.name, [l.gap.mm, ...l.marks.map((m) => m.mm)]]),
    ...(envelope
      ? [
          [
            'envelope',
            [
              ...of(envelope.sheet),
              ...of(envelope.inside),
              ...(envelope.scores?.map(({ at }) => at.mm) ?? [envelope.score.mm]),
            ],
          ] as [string, number[]],
        ]
      : []),
  ])
}

describe.each(lessons)('%s', (name) => {
  const lesson = readLesson(textOf(name))
  const chart = chartOf(textOf(name))

  test('has a column for each size and unit, and every number of it is that of a print of its own', () => {
    const [block] = chart.blocks
    const sizes = [undefined, ...lesson.frontMatter.sizes.map(({ text }) => text)]
    expect(block?.columns).toHaveLength(2 * sizes.length)
    for (const [i, { unit }] of block?.columns.entries() ?? []) {
      const size = sizes[i % sizes.length]
      const print = fillLesson(lesson, { units: unit, ...(size && { closed: readSize(size) }) })
      const [card] = measures(print).cards
      if (!card) throw new Error('no card')
      const told = said(card)
      const named = new Set<string>()
      for (const group of block?.groups ?? [])
        for (const owner of group.names) {
          named.add(owner)
          const cells = group.rows.map(({ cells }) => cells[i] ?? '')
          const expected = sorted(told.get(owner) ?? [])
          const found = sorted(cells.flatMap((cell) => numbers(cell, unit)))
          // Lines that meet end to end are one line, so their ends need not all be told, but nothing else is.
          expect(expected, `${owner} ${size} ${unit}`).toEqual(
            expect.arrayContaining(found.filter((x) => x !== 0)),
          )
          const [least = '', ...rest] = cells
          expect(least).not.toBe('')
          if (rest.length === 0) expect(found).toEqual(expected)
        }
      expect([...told.keys()].filter((owner) => !named.has(owner))).toEqual([])
    }
  })

  test('every mark of every score is there', () => {
    for (const { name: card, columns, groups } of chart.blocks.map((b) => ({ ...b, name: b.card })))
      for (const [i, { label, unit }] of columns.entries()) {
        const print = chart.prints.find((p) => p.label === label && p.unit === unit)?.print
        const pieces = measures(print ?? fillLesson(lesson)).cards.find((c) => c.name === card)?.pieces ?? []
        for (const piece of pieces) {
          const group = groups.find(({ names, kind }) => kind === 'piece' && names.includes(piece.name))
          const found = sorted(group?.rows.flatMap(({ cells }) => numbers(cells[i] ?? '', unit)) ?? [])
          expect(found).toEqual(expect.arrayContaining(sorted(piece.scores.map(({ at }) => at.mm))))
        }
      }
  })
})

const harbour = textOf('harbour-lights.md')

test('the JSON has the measures of each print', () => {
  const lesson = readLesson(harbour)
  for (const { size, units, cards, works } of sizeChartJson(chartOf(harbour)).sizes) {
    const other = lesson.frontMatter.sizes.find(({ text }) => text.replace(' x ', ' × ') === size)
    const print = fillLesson(lesson, { units, ...(other && { closed: other.size }) })
    expect([works, cards]).toEqual([true, measures(print).cards])
  }
})

test('a size that does not work has a column without numbers and its reason below', () => {
  const chart = chartOf(harbour.replace(/^sizes:.*$/m, 'sizes: [4 x 4 in]'))
  const [block] = chart.blocks
  expect(block?.columns.map(({ label, unit, works }) => [label, unit, works])).toEqual([
    ['7 × 5 in', 'in', true],
    ['4 × 4 in', 'in', false],
    ['7 × 5 in', 'mm', true],
    ['4 × 4 in', 'mm', false],
  ])
  for (const { cells } of block?.groups.flatMap(({ rows }) => rows) ?? [])
    expect(cells.map((cell) => cell === '')).toEqual([false, true, false, true])
  expect(hasErrors(chart.findings)).toBe(true)
  const text = sizeChartText(chart).replace(/\s+/g, ' ')
  expect(text).toContain('At 4 × 4 in: 7 letters take 4 3/8 in, but there are 3 1/2 in between the margins.')
  expect(text).toContain('`widths: 7/16 in` for `name` works')
})

test('pieces that are alike in every size and number have one row; others do not', () => {
  const names = chartOf(textOf('harbour-arches.md')).blocks[0]?.groups.map((group) => group.names)
  expect(names).toContainEqual(['outer arch', 'inner arch'])
  const box = chartOf(textOf('tide-box.md')).blocks[0]?.groups ?? []
  // Both are 3 1/4 in square, but there are four of one.
  expect(box.map((group) => group.names)).toContainEqual(['notes'])
  expect(box.map((group) => group.names)).toContainEqual(['sand'])
})

test('one unit alone can be asked for', () => {
  const units = chartOf(harbour, ['mm']).blocks[0]?.columns.map(({ unit }) => unit)
  expect(units).toEqual(['mm', 'mm', 'mm', 'mm'])
})

test('several cards have a block each, and only the main one has other sizes', () => {
  const two = harbour.replace('```supplies', '```card tag\nfold: side\nclosed: 2 x 3 in\n```\n\n```supplies')
  expect(chartOf(two).blocks.map(({ card, columns }) => [card, columns.length])).toEqual([
    ['card', 8],
    ['tag', 2],
  ])
})

/** Fields of a CSV file, read by hand as RFC 4180 says. */
function readCsv(text: string): string[][] {
  const rows: string[][] = []
  for (const line of text
    .replace(/^\ufeff/, '')
    .split('\r\n')
    .slice(0, -1)) {
    const fields = [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^",]*))/g)]
    rows.push(fields.map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? ''))
  }
  return rows
}

test('the CSV has a column for each size and unit, and its measures add up again', () => {
  const [head, ...rows] = readCsv(sizeChartCsv(chartOf(harbour)))
  expect(head?.slice(0, 7)).toEqual([
    'card',
    'piece',
    'number',
    'note',
    'what',
    '7 × 5 in in inches',
    '6 × 6 in in inches',
  ])
  for (const row of rows) expect(row).toHaveLength(13)
  const cells = (piece: string, what: string) =>
    rows.find((row) => row[1] === piece && row[4] === what)?.slice(5) ?? []
  expect(cells('base', 'cut to')[0]).toBe('8 1/2 × 5 in')
  // Both mountains of a bridge are as far from their ends of the base.
  const bases = cells('base', 'cut to')
  for (const [i, text] of cells('base', 'mountain, from the left edge').entries()) {
    const unit = text.endsWith('in') ? 'in' : 'mm'
    const [one, other] = text
      .replace(/ (in|mm)$/, '')
      .split(', ')
      .map((n) => readLength(`${n} ${unit}`))
    expect(
      plus(...([one, other] as Length[])).equals(readSize((bases[i] ?? '').replace('×', 'x')).width),
    ).toBe(true)
  }
  // A spreadsheet would take these for days of a year.
  expect(rows.flat().filter((field) => /^\d+\/\d+$/.test(field))).toEqual([])
})

test('what a spreadsheet would take for a formula, and what would end a field, stay text', () => {
  const odd = harbour.replace('stock: grey card', 'stock: \'=1+1, "grey"\'')
  const note = readCsv(sizeChartCsv(chartOf(odd))).find((row) => row[1] === 'sea wall')?.[3]
  expect(note).toBe('\'=1+1, "grey"')
})
