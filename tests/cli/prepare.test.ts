import { expect, test } from 'vitest'
import { harbour } from './lessons.ts'
import { foldlore } from './memory.ts'

const files = (more = '') => ({
  'class.yaml': `title: Saturday\nlesson: harbour.md\npeople: 5\nspare: 1\nsheets: {dark blue card: 12 x 12 in, patterned paper: 12 x 12 in, vellum: 12 x 12 in, grey card: 12 x 12 in, white card: 12 x 12 in, envelope paper: 12 x 12 in}\n${more}`,
  'harbour.md': harbour,
})

test('what to cut, have ready and pack on the evening before, and about how long it takes', async () => {
  const { code, out } = await foldlore(['prepare', 'class.yaml', '--quiet'], files())
  expect(code).toBe(0)
  expect(out).toMatch(/^The evening before: Saturday\nAbout .* for 6 kits: an estimate with 0\.5 min a cut/)
  expect(out).toMatch(/\nCut\n.*\n +dark blue card +12 × 12 in +3 +3 +3 +4\.5 /)
  expect(out).toContain('Have ready')
  expect(out).toMatch(/\nPack\n/)
  expect(out).not.toMatch(/\nScore\n/)
})

test('it follows what the class file says of the evening and of the trimmer', async () => {
  const more =
    'prepare: {do: [cut, score], minutes: {cut: 1, score: 0.5, item: 0.1, kit: 1}}\ntrimmer: {stack: 3}\n'
  const { out } = await foldlore(['prepare', 'class.yaml', '--json'], files(more))
  const { cutting, scoring, measured, minutes, packing } = JSON.parse(out)
  // Three sheets at once, three cuts of a minute.
  expect(cutting[0]).toMatchObject({ stock: 'dark blue card', sheets: 3, stacks: 1, cuts: 3, minutes: 3 })
  expect(scoring[0]).toMatchObject({ piece: 'base', count: 6, scores: 4, minutes: 12 })
  expect(measured).toBe(true)
  const all = [...cutting, ...scoring, ...packing]
  expect(minutes).toBeCloseTo(
    all.reduce((sum, work) => sum + work.minutes, 0),
    9,
  )
})

test('it is written as a spreadsheet takes it', async () => {
  const { text, code } = await foldlore(['prepare', 'class.yaml', '-o', 'evening.csv', '--quiet'], files())
  expect(code).toBe(0)
  expect(text('evening.csv')).toContain('dark blue card,12 × 12 in,')
})
