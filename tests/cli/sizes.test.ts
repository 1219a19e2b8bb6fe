import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { htmlMark } from '../../src/publish/our-marks.ts'
import { broken, harbour, small } from './lessons.ts'
import { foldlore, foldloreIn, memory } from './memory.ts'

const failing = harbour.replace(/^sizes:.*$/m, 'sizes: [4 x 4 in]')
const tide = readFileSync(new URL('../../lessons/low-tide-z-card.md', import.meta.url), 'utf8')
const files = { 'h.md': harbour, 'f.md': failing, 's.md': small, 'b.md': broken, 't.md': tide }
const sizes = (...argv: string[]) => foldlore(['sizes', ...argv, '--quiet'], files)

test('the chart in the terminal: a table for each unit, the own one first', async () => {
  const { code, out } = await sizes('h.md')
  expect(code).toBe(0)
  expect(out).toMatch(
    /^Size chart: Harbour lights\n\nInches\n {2}piece +7 × 5 in +6 × 6 in +A6 landscape +180 × 120 mm\n/,
  )
  expect(out).toMatch(
    /\n {2}base \(dark blue card\) +8 1\/2 × 5 +7 1\/2 × 6 +7 5\/16 × 4 1\/8 +8 9\/16 × 4 11\/16\n/,
  )
  expect(out).toMatch(
    /\nMillimetres\n[\s\S]*\n {2}base \(dark blue card\) +215 × 127 +190 × 152 +186 × 105 +218 × 120\n/,
  )
  expect((await sizes('t.md')).out).toMatch(/^Size chart: Low tide\n\nMillimetres\n[\s\S]*\nInches\n/)
})

test('--units takes one unit, --closed adds a size or the own one turned', async () => {
  const { out } = await sizes('h.md', '--units', 'mm', '--closed', '8 x 6 in')
  expect(out).not.toContain('Inches')
  expect(out).toMatch(/180 × 120 mm +8 × 6 in\n/)
  expect((await sizes('s.md', '--closed', 'landscape')).out).toMatch(
    / 5 × 7 in +landscape\n.* 5 × 7 +7 × 5\n/,
  )
  // A size that is there already is not told twice.
  expect((await sizes('h.md', '--closed', '7 x 5 in')).out).toBe((await sizes('h.md')).out)
})

test('a size that does not work is told, in the chart and as a finding: exit code 1', async () => {
  const { code, out, err } = await sizes('f.md')
  expect(code).toBe(1)
  expect(err).toMatch(/^f\.md:6:9 error At 4 × 4 in: 7 letters take /)
  expect(out.replace(/\s+/g, ' ')).toContain('At 4 × 4 in: 7 letters take ')
  const json = await sizes('f.md', '--json')
  expect([json.code, json.err]).toEqual([1, ''])
  expect(JSON.parse(json.out).sizes.map((s: { works: boolean }) => s.works)).toEqual([
    true,
    true,
    false,
    false,
  ])
})

test('a lesson with errors of its own has no chart', async () => {
  const { code, out, err } = await sizes('b.md')
  expect([code, out]).toEqual([1, ''])
  expect(err).toContain('(unknown-name)')
})

test('-o a Markdown, text, CSV or HTML file gives that kind', async () => {
  expect((await sizes('h.md', '-o', 'c.md')).text('c.md')).toMatch(
    /^# Size chart: Harbour lights\n\n## Inches\n\n\| piece/,
  )
  expect((await sizes('h.md', '-o', 'c.txt')).text('c.txt')).toMatch(/^Size chart: Harbour lights\n/)
  expect((await sizes('h.md', '-o', 'c.csv')).text('c.csv')).toMatch(
    /^\ufeffcard,piece,number,note,what,7 × 5 in in inches,/,
  )
  const page = await sizes('h.md', '-o', 'c.html')
  expect(page.text('c.html')).toContain(htmlMark)
  expect(await sizes('h.md', '-o', 'c.doc')).toMatchObject({ code: 2 })
})

test('without a browser the page is there all the same, and what somebody else made is kept', async () => {
  const world = memory({ 'in/s.md': small }, { FOLDLORE_BROWSER: '/none/chrome' })
  expect(await foldloreIn(world, ['sizes', 'in/s.md', '-o', 'out'])).toBe(3)
  expect([...world.disk.keys()]).toEqual(['in/s.md', 'out/s-sizes.html'])
  const taken = { ...files, 'c.csv': 'mine' }
  expect((await foldlore(['sizes', 's.md', '-o', 'c.csv'], taken)).text('c.csv')).toBe('mine')
})
