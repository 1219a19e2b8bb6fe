import { readXlsx } from 'hucre'
import { expect, test } from 'vitest'
import { workbook } from '../../src/publish/workbook.ts'
import { mayWrite } from '../../src/publish/write.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { money, number, type Table, text, time } from '../../src/workshop/table.ts'

const table: Table = {
  name: 'To buy',
  title: 'To buy: Saturday',
  columns: [text('item'), number('width, in'), money('cost'), time('at')],
  rows: [
    ['blue card', 8.5, 2.2, 605],
    ['=1+1', undefined, 0.125, 1440 + 5],
  ],
  currency: '£',
}
/** Read by a program that shares nothing with the one that writes. */
const read = async (tables: readonly Table[], title = 'Saturday') =>
  readXlsx(await workbook(title, tables, wordingOf('en', 'in')), { readStyles: true })
const only = async (one: Table) => {
  const [sheet] = (await read([one])).sheets
  if (!sheet) throw new Error('There is no sheet')
  return sheet
}

test('numbers are numbers, money has its sign, times are times of day', async () => {
  const { rows, cells } = await only(table)
  expect(rows[2]?.slice(0, 3)).toEqual(['blue card', 8.5, 2.2])
  expect(cells?.get('2,2')?.style?.numFmt).toBe('"£"#,##0.00')
  expect(JSON.stringify(rows[2]?.[3])).toMatch(/T10:05:00/)
  expect(cells?.get('2,3')?.style?.numFmt).toBe('hh:mm')
  // Not rounded: a column adds up to its sum.
  expect(rows[3]?.[2]).toBe(0.125)
})

test.each([
  ['en', '"€"#,##0.00'],
  ['de', '#,##0.00" €"'],
  ['fr', '#,##0.00" €"'],
  ['es', '#,##0.00" €"'],
])('the sign of money stands where it stands in %s', async (lang, format) => {
  const written = await workbook('Saturday', [{ ...table, currency: '€' }], wordingOf(lang, 'mm'))
  const { sheets } = await readXlsx(written, { readStyles: true })
  expect(sheets[0]?.cells?.get('2,2')?.style?.numFmt).toBe(format)
})

test('words behind an amount', async () => {
  const { cells } = await only({ ...table, currency: 'EUR' })
  expect(cells?.get('2,2')?.style?.numFmt).toBe('#,##0.00" EUR"')
})

test('a title, bold heads that stay in sight, columns as wide as what is in them', async () => {
  const { rows, cells, columns, freezePane, pageSetup } = await only(table)
  expect(rows.slice(0, 2)).toEqual([
    ['To buy: Saturday', null, null, null],
    ['item', 'width, in', 'cost, £', 'at'],
  ])
  expect([0, 1, 2, 3].map((i) => cells?.get(`1,${i}`)?.style?.font?.bold)).toEqual([true, true, true, true])
  expect(freezePane).toMatchObject({ rows: 2 })
  expect(columns?.map(({ width }) => width)).toEqual([11, 11, 9, 7])
  expect(pageSetup?.orientation).toBe('landscape')
})

test.each([
  '=1+1',
  '+1',
  '-1',
  '@SUM(A1)',
  '\t=1',
  '=HYPERLINK("http://a.example")',
  '1/2',
  '2024',
  'a\u0001b',
])('text stays text, whatever it begins with: %j', async (words) => {
  const { rows, cells } = await only({ ...table, rows: [[words, 1, 1, 0]] })
  expect(rows[2]?.[0]).toBe(words.replace('\u0001', ''))
  expect(cells?.get('2,0')).toMatchObject({ type: 'string', style: { numFmt: '@' } })
  expect(cells?.get('2,0')?.formula).toBeUndefined()
})

test('a sheet for each table, and the title in the properties', async () => {
  const { sheets, properties } = await read([table, { ...table, name: 'Cost' }], 'Tea & <buns>')
  expect(sheets.map(({ name }) => name)).toEqual(['To buy', 'Cost'])
  expect(properties).toMatchObject({ title: 'Tea & <buns>', creator: 'foldlore' })
})

test("a workbook of ours is written again, another's is kept", async () => {
  const ours = await workbook('Saturday', [table], wordingOf('en', 'in'))
  const { writeXlsx } = await import('hucre')
  const theirs = await writeXlsx({ sheets: [{ name: 'Mine', rows: [['foldlore']] }] })
  const disk = (content: Uint8Array) =>
    ({ read: async () => content }) as unknown as Parameters<typeof mayWrite>[2]
  await mayWrite('a.xlsx', false, disk(ours))
  await expect(mayWrite('a.xlsx', false, disk(theirs))).rejects.toMatchObject({ name: 'NotOursError' })
  await expect(mayWrite('a.xlsx', false, disk(ours.subarray(0, 200)))).rejects.toMatchObject({
    name: 'NotOursError',
  })
})
