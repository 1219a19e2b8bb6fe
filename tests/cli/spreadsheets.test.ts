import { parseCsv, readXlsx } from 'hucre'
import { expect, test } from 'vitest'
import { harbour } from './lessons.ts'
import { foldlore } from './memory.ts'

const stocks = ['dark blue card', 'patterned paper', 'vellum', 'grey card', 'white card', 'envelope paper']
const saturday = `title: =Saturday
lesson: harbour.md
people: 5
spare: 1
currency: £
sheets:
${stocks.map((stock) => `  ${stock}: {size: 12 x 12 in, price: 0.45}`).join('\n')}
supplies:
  double-sided tape: {roll: 10 m, price: 2.20}
start: 10:00
`
const files = { 'saturday.yaml': saturday, 'harbour.md': harbour }

/** The rows below the heads of each sheet, by the name of the sheet. */
async function sheetsOf(command: string, ...argv: string[]) {
  const { code, disk } = await foldlore([...argv, '-o', 'a.xlsx', '--quiet'], files)
  expect([command, code]).toEqual([command, 0])
  const { sheets } = await readXlsx(disk.get('a.xlsx') ?? new Uint8Array())
  return new Map(
    sheets.map(({ name, rows: [, heads = [], ...body] }) => [
      name,
      body.map((row) => Object.fromEntries(row.map((cell, i) => [String(heads[i]), cell]))),
    ]),
  )
}
const sum = (rows: readonly Record<string, unknown>[] = [], head: string): number =>
  rows.reduce((all, row) => all + Number(row[head] ?? 0), 0)

test('kit of a class as a workbook: the column of costs adds up to what is said', async () => {
  const sheets = await sheetsOf('kit', 'kit', 'saturday.yaml')
  expect([...sheets.keys()]).toEqual([
    'To buy',
    'Cost',
    'Each kit',
    'On the tables',
    'For the tutor',
    'Weight',
  ])
  const [inAll, aHead] = sheets.get('Cost') ?? []
  expect([inAll?.what, aHead?.what]).toEqual(['paper and supplies', 'that a head, for 5'])
  expect(sum(sheets.get('To buy'), 'cost, £')).toBeCloseTo(Number(inAll?.['amount, £']), 9)
  expect(Number(aHead?.['amount, £'])).toBeCloseTo(Number(inAll?.['amount, £']) / 5, 2)
  // 4 · 5 in of tape for each of 6; two bases of 8 1/2 × 5 in come out of a sheet.
  expect(sheets.get('To buy')).toContainEqual(
    expect.objectContaining({ item: 'double-sided tape', needed: 120, unit: 'in', buy: 1, 'cost, £': 2.2 }),
  )
  expect(sheets.get('To buy')).toContainEqual(
    expect.objectContaining({ item: 'dark blue card', 'width, in': 12, needed: 3, unit: 'sheets', buy: 3 }),
  )
  expect(sheets.get('Each kit')).toContainEqual(
    expect.objectContaining({
      item: 'base',
      'width, in': 8.5,
      'height, in': 5,
      'as written': '8 1/2 × 5 in',
    }),
  )
})

test('a cutting plan as a workbook: as many pieces as all kits need, none larger than its sheets', async () => {
  const sheets = await sheetsOf('sheets', 'sheets', 'saturday.yaml')
  const pieces = sheets.get('Pieces') ?? []
  const count = (piece: string) =>
    sum(
      pieces.filter((row) => row.piece === piece),
      'in all',
    )
  expect(['base', 'side strip', 'envelope'].map(count)).toEqual([6, 12, 6])
  const area = (row: Record<string, unknown>) => Number(row['width, in']) * Number(row['height, in'])
  for (const stock of stocks) {
    const of = (rows: readonly Record<string, unknown>[] = []) => rows.filter((row) => row.stock === stock)
    const used = of(pieces).reduce((all, row) => all + area(row) * Number(row['in all']), 0)
    const there = of(sheets.get('Sheets')).reduce((all, row) => all + area(row) * Number(row.sheets), 0)
    expect(used).toBeGreaterThan(0)
    expect(used).toBeLessThanOrEqual(there)
  }
  expect(sheets.get('Cutting')?.[0]).toMatchObject({
    stock: 'dark blue card',
    cut: 1,
    'set the stop to, in': 8.5,
  })
})

test('a run sheet as a workbook: each line begins when the one before it ends', async () => {
  const slots = (await sheetsOf('runsheet', 'runsheet', 'saturday.yaml')).get('Run sheet') ?? []
  const at = slots.map((row) => (row.at as Date).getTime() / 60_000)
  for (const [i, { minutes }] of slots.slice(0, -1).entries())
    expect((at[i + 1] ?? 0) - (at[i] ?? 0)).toBeCloseTo(Number(minutes), 3)
})

test('kit of a lesson as a workbook and as comma-separated values', async () => {
  const sheets = await sheetsOf('kit', 'kit', 'harbour.md', '--people', '5', '--units', 'mm')
  expect(sheets.get('To cut')).toContainEqual(
    expect.objectContaining({ piece: 'side strip', number: 10, 'width, mm': 19, 'height, mm': 127 }),
  )
  const { text } = await foldlore(['kit', 'harbour.md', '--people', '5', '-o', 'a.csv'], files)
  expect(parseCsv(text('a.csv'))[0]?.slice(0, 4)).toEqual(['lesson', 'item', 'number', 'width, in'])
})

test('comma-separated values of a class and of a plan', async () => {
  const kit = await foldlore(['kit', 'saturday.yaml', '-o', 'a.csv', '--quiet'], files)
  expect(kit.text('a.csv')).toMatch(/\r\ndouble-sided tape,+120,0,in,120 in,1,roll of 10 m,2\.2\r\n/)
  const plan = await foldlore(['sheets', 'saturday.yaml', '-o', 'a.csv', '--quiet'], files)
  expect(plan.text('a.csv')).toContain('\r\ndark blue card,12,12,12 × 12 in,3,3,proven\r\n')
})
