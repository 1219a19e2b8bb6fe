import { expect, test } from 'vitest'
import { openPdf, pageTexts } from '../publish/pdf-reading.ts'
import { harbour } from './lessons.ts'
import { foldlore, foldloreIn, memory } from './memory.ts'

const stocks = ['dark blue card', 'patterned paper', 'vellum', 'grey card', 'white card', 'envelope paper']
const saturday = `title: Saturday
lesson: harbour.md
people: 5
spare: 1
currency: £
sheets:
${stocks.map((stock) => `  ${stock}: {size: 12 x 12 in, price: 0.50}`).join('\n')}
supplies:
  double-sided tape: {roll: 10 m, price: 2.20}
`
const files = { 'saturday.yaml': saturday, 'harbour.md': harbour }

test('a cutting plan, in the terminal: how many sheets, and each cut as the trimmer is set', async () => {
  const { code, out } = await foldlore(['sheets', 'saturday.yaml', '--quiet'], files)
  expect(code).toBe(0)
  expect(out).toMatch(/^Cutting plan: Saturday\n/)
  // Two bases of 8 1/2 × 5 in from a sheet, six kits.
  expect(out).toMatch(/\n {2}dark blue card +12 × 12 in +3 +yes, proven\n/)
  expect(out).toMatch(/dark blue card, 12 × 12 in: cut 3 like this\n.*\n +1 +8 1\/2 in +left edge/)
})

test('--json has the promised shape', async () => {
  const { out } = await foldlore(['sheets', 'saturday.yaml', '--json'], files)
  const { plans, short } = JSON.parse(out)
  expect(short).toEqual([])
  expect(plans[0]).toMatchObject({
    stock: 'dark blue card',
    sheet: { width: { in: 12, text: '12 in' }, height: { in: 12 } },
    used: 3,
    lowerBound: 3,
    proven: true,
  })
  const [layout] = plans[0].layouts
  expect(layout.times).toBe(3)
  expect(layout.placed[0]).toMatchObject({
    piece: 'base',
    lesson: 'Harbour lights',
    x: { mm: 0 },
    y: { mm: 0 },
    width: { in: 8.5 },
    height: { in: 5 },
    turned: false,
  })
  expect(layout.cuts[0]).toMatchObject({ across: 'width', at: { in: 8.5 }, from: { in: 0 }, to: { in: 12 } })
  const hands = layout.cuts.map(({ turn, label, aside }: Record<string, unknown>) => [turn, label, aside])
  expect(hands).toEqual([
    [false, [], []],
    [true, ['base'], []],
    [false, ['base'], []],
  ])
})

test('printed with its drawings', async () => {
  const here = memory(files)
  expect(await foldloreIn(here, ['sheets', 'saturday.yaml', '-o', 'plan.pdf', '--quiet'])).toBe(0)
  const text = (await pageTexts(await openPdf(here.disk.get('plan.pdf') ?? new Uint8Array()))).join(' ')
  expect(text).toContain('Cutting plan: Saturday')
  expect(text).toContain('set the stop to')
  expect(text.replace(/\s+/g, ' ')).toContain('It gives 2 × base.')
})

test('paper that is missing is an error at its place, and the rest is planned', async () => {
  const small = saturday.replace('grey card: {size: 12 x 12 in', 'grey card: {size: 2 x 2 in')
  const { code, out, err } = await foldlore(['sheets', 'saturday.yaml', '--quiet'], {
    ...files,
    'saturday.yaml': small,
  })
  expect(code).toBe(1)
  expect(out).toContain('What cannot be cut')
  expect(err).toMatch(
    /saturday\.yaml:10:15 error 6 × `sea wall` of “Harbour lights” cannot be cut: .*\(not-cut\)\n {2}Get a sheet of at least/,
  )
})

test('kit lists what to buy of a class file, with the sheets and what they cost', async () => {
  const { code, out } = await foldlore(['kit', 'saturday.yaml', '--quiet'], files)
  expect(code).toBe(0)
  expect(out).toMatch(/dark blue card, 12 × 12 in +3 +3 +£1\.50\n/)
  // 4 · 5 in of tape for each of 6.
  expect(out).toMatch(/double-sided tape +3\.05 m +1 +roll of 10 m +£2\.20\n/)
  expect(out).toMatch(/Paper and supplies come to £\d+\.\d\d a head, with the spare kits\./)
  const { out: json } = await foldlore(['kit', 'saturday.yaml', '--json'], files)
  const { buy, people, spare } = JSON.parse(json)
  expect([people, spare]).toEqual([5, 1])
  expect(buy).toContainEqual({
    item: 'double-sided tape',
    need: { mm: 3048, in: 120, text: '120 in' },
    sold: 'roll of 10 m',
    count: 1,
    have: { mm: 0, in: 0, text: '0 in' },
    cost: 2.2,
  })
})

test('a class file says itself how many people come', async () => {
  const { code, err } = await foldlore(['kit', 'saturday.yaml', '--people', '3'], files)
  expect(code).toBe(2)
  expect(err).toContain('Change `people:`')
})

test('the unit of the command line goes before that of the class file, in every number', async () => {
  const inInches = { ...files, 'saturday.yaml': `units: in\n${saturday}` }
  const { out } = await foldlore(['kit', 'saturday.yaml', '--units', 'mm', '--quiet'], inInches)
  expect(out).toMatch(/ mm /)
  // Not `£20.50 in all`.
  expect(out).not.toMatch(/\d in\b(?! all)/)
})
