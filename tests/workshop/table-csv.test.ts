import { parseCsv } from 'hucre'
import { expect, test } from 'vitest'
import { wordingOf } from '../../src/wording/wording.ts'
import { money, number, text, time, withoutEmpty } from '../../src/workshop/table.ts'
import { tablesCsv } from '../../src/workshop/table-csv.ts'

const english = wordingOf('en', 'in')

const table = {
  name: 'To buy',
  title: 'To buy: Saturday',
  columns: [text('item'), number('width, in'), money('cost'), time('at')],
  rows: [['blue "best" card', 8.5, 2.2, 605]],
  currency: '£',
}

test('plain numbers, times of day, and the currency in the head', () => {
  const csv = tablesCsv([table], english)
  expect(csv).toBe('\ufeffitem,"width, in","cost, £",at\r\n"blue ""best"" card",8.5,2.2,10:05\r\n')
  // Another reader finds the same.
  expect(parseCsv(csv)).toEqual([
    ['item', 'width, in', 'cost, £', 'at'],
    ['blue "best" card', '8.5', '2.2', '10:05'],
  ])
})

test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '＝1'])(
  'what would be a formula is marked as text: %j',
  (words) => {
    const [, [cell] = []] = parseCsv(tablesCsv([{ ...table, rows: [[words, 1, 1, 0]] }], english))
    expect(cell).toBe(`'${words}`)
  },
)

test('tables and columns that say nothing are left out', () => {
  const rows = [
    ['a', undefined, 1, undefined],
    ['b', undefined, undefined, undefined],
  ]
  const [one, ...others] = withoutEmpty([
    { ...table, rows },
    { ...table, rows: [] },
  ])
  expect(others).toEqual([])
  expect(one?.columns.map(({ head }) => head)).toEqual(['item', 'cost'])
  expect(one?.rows).toEqual([
    ['a', 1],
    ['b', undefined],
  ])
})

test.each(['de', 'fr', 'es'])('in %s decimals have a comma, and a semicolon parts the cells', (lang) => {
  const rows = [['a;b', 2.5, 1.25, 605]]
  const csv = tablesCsv([{ ...table, rows }], wordingOf(lang, 'mm'))
  expect(parseCsv(csv, { delimiter: ';' })[1]).toEqual(['a;b', '2,5', '1,25', '10:05'])
})
