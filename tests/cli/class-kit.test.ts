import { describe, expect, test } from 'vitest'
import { classKitShape } from '../workshop/contract.ts'
import { small } from './lessons.ts'
import { foldlore } from './memory.ts'

/** A class that buys by length, area, dose and number, in two parts of the shop. */
const lesson = small
  .replace(
    'double-sided tape: base.width * 2',
    'double-sided tape: base.width * 2\n  glue sheet: mat.width * mat.height\n  pva glue: 5 g\n  ink: 3 drops',
  )
  .replace('scoring board: 1 per 3', 'scoring board: 1 per 3\n  glue pot: 1 per table')
  .replace(
    'with double-sided tape.',
    'with double-sided tape, a glue sheet, pva glue from the glue pot, and ink.',
  )
const class_ = `title: Quillhaven evening
lesson: small.md
people: [Ada, Bo, {name: Cy, table: stove}, Dee, Eli]
spare: 1
currency: £
sheets:
  white card: {size: 12 x 12 in, price: 0.40}
  patterned paper: {size: 12 x 12 in, price: 0.45, weight: 120 gsm}
supplies:
  double-sided tape: {roll: 10 m, price: 2.20}
  glue sheet: {sheet: 8 x 12 in, price: 0.90}
  pva glue: {bottle: 100 g, price: 2.10}
  ink: {pot: 300 drops, price: 3}
shop: {paper aisle: [white card, patterned paper], glue: [double-sided tape, glue sheet, pva glue]}
price: {fees: {room: 20}, each: {tea: 1.50}, margin: 20 %, round to: 0.50}
tables: {window: 3, stove: 2}
`
const files = { 'evening.yaml': class_, 'small.md': lesson }

// By hand. A base of 10 × 7 in, six of them from sheets of 12 × 12 in, one each: 6 × 0.40 = 2.40. Of mats of
// 4 3/4 × 6 3/4 in four lie round the middle of a sheet: 2 × 0.45 = 0.90. Tape 6 × 20 in = 3.05 m: 2.20. Glue
// 6 × 32.0625 = 192.375 sq in from sheets of 96: 3 × 0.90 = 2.70. 30 g: 2.10. 18 drops: 3.00. In all 13.30;
// 13.30 + 20 + 5 × 1.50 = 40.80; 40.80 / 5 / 0.8 = 10.20, up to 10.50; 52.50 - 40.80 = 11.70; (13.30 + 20) / 9 = 3.7.
describe('a class worked by hand', () => {
  test('--json has the promised shape, and every sum', async () => {
    const { code, out, err } = await foldlore(['kit', 'evening.yaml', '--json'], files)
    expect([code, err]).toEqual([0, ''])
    const kit = classKitShape.parse(JSON.parse(out))
    expect(kit.findings).toEqual([])
    expect(kit.buy.map(({ item, count, sold, cost, at }) => [item, count, sold, cost, at])).toEqual([
      ['white card', 6, undefined, 2.4, 'paper aisle'],
      ['patterned paper', 2, undefined, 0.9, 'paper aisle'],
      ['double-sided tape', 1, 'roll of 10 m', 2.2, 'glue'],
      ['glue sheet', 3, 'sheet of 8 × 12 in', 2.7, 'glue'],
      ['pva glue', 1, 'bottle of 100 g', 2.1, 'glue'],
      ['ink', 1, 'pot of 300 drops', 3, 'the rest'],
    ])
    expect([kit.total, kit.aHead]).toEqual([13.3, 2.66])
    expect(kit.price).toMatchObject({ cost: 40.8, charge: 10.5, left: 11.7, paysFrom: 4 })
    expect(kit.tables?.map(({ name, people, shared }) => [name, people, shared.map((s) => s.count)])).toEqual(
      [
        ['window', 3, [1, 1]],
        ['stove', 2, [1, 1]],
      ],
    )
    // 10 × 7 in of 300 gsm, and 4 3/4 × 6 3/4 in of 120 gsm: 13.548 + 2.482 g.
    expect(kit.weight.perKit).toEqual([{ lesson: 'Low tide', grams: 16 }])
  })

  test('the list tells it in words, and names nobody', async () => {
    const { out } = await foldlore(['kit', 'evening.yaml'], files)
    expect(out).toContain('\nTo buy: paper aisle\n')
    expect(out).toMatch(/\n {2}glue sheet +192\.4 sq in +3 {2}sheet of 8 × 12 in +£2\.70\n/)
    expect(out).toMatch(/\n {2}pva glue +30 g +1 {2}bottle of 100 g +£2\.10\n/)
    expect(out).toMatch(/\n {2}ink +18 drops +1 {2}pot of 300 drops +£3\.00\n/)
    expect(out).toMatch(
      /\n {2}paper and supplies +£13\.30\n {2}room +£20\.00\n {2}tea, 5 × £1\.50 +£7\.50\n {2}in all +£40\.80\n/,
    )
    expect(out).toContain('charge £10.50, £10.20 rounded up.')
    expect(out).toContain('It pays for itself from 4 people on.')
    expect(out).toContain('\nOn the table “stove”: 2 people\n')
    expect(out).not.toMatch(/\b(?:Ada|Cy)\b/)
  })
})

test('areas are told in square centimetres in a class in millimetres', async () => {
  const { out } = await foldlore(['kit', 'evening.yaml', '--units', 'mm', '--quiet'], files)
  expect(out).toMatch(/\n {2}glue sheet +\d+(\.\d)? cm² /)
})

test('glue by the gram from a bottle of millilitres is an error with its place and cure; the list comes all the same', async () => {
  const { code, out, err } = await foldlore(['kit', 'evening.yaml'], {
    ...files,
    'evening.yaml': class_.replace('bottle: 100 g', 'bottle: 120 ml'),
  })
  expect(code).toBe(1)
  expect(err).toMatch(
    /^evening\.yaml:12:3 error `pva glue` is used up as 30 g in all, and sold as a bottle of 120 ml/,
  )
  expect(err).toContain('Say both in grams, or both in millilitres')
  expect(out).toContain('Without a price, and not in the sums: pva glue.')
})
