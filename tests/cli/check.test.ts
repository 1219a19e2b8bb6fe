import { expect, test } from 'vitest'
import { finding } from '../workshop/contract.ts'
import { broken, harbour, small } from './lessons.ts'
import { foldlore } from './memory.ts'

const files = { 'small.md': small, 'broken.md': broken, 'harbour.md': harbour }

test('a clean lesson: nothing found, exit code 0', async () => {
  const { code, out, err } = await foldlore(['check', 'small.md'], files)
  expect([code, out, err]).toEqual([0, 'No findings in 1 lesson.\n', ''])
})

test('every mistake is told at its line and column, with a cure, and the exit code is 1', async () => {
  const { code, out, err } = await foldlore(['check', 'broken.md', 'small.md'], files)
  expect([code, err]).toEqual([1, ''])
  const column = (line: number, text: string) => (broken.split('\n')[line - 1]?.indexOf(text) ?? -1) + 1
  const told = out.split('\n').filter((line) => line.startsWith('broken.md:'))
  expect(told[0]).toMatch(
    new RegExp(`^broken\\.md:27:${column(27, 'base.scors')} error .*\`scors\`.* \\(unknown-name\\)$`),
  )
  expect(told[1]).toMatch(
    new RegExp(`^broken\\.md:29:${column(29, 'mta.size')} error .*\`mta.size\`.* \\(unknown-name\\)$`),
  )
  expect(out).toContain('\n  Write `base.scores`\n')
  expect(out).toContain('\n  Write `mat.size`\n')
  expect(out).toMatch(/\n2 errors.* in 2 lessons\.\n$/)
})

test('--json gives the findings of every lesson', async () => {
  const { code, out } = await foldlore(['check', 'broken.md', 'small.md', '--json'], files)
  const { lessons } = JSON.parse(out)
  expect(code).toBe(1)
  expect(lessons.map((l: { file: string }) => l.file)).toEqual(['broken.md', 'small.md'])
  const findings = finding.array().parse(lessons[0].findings)
  expect(findings.filter((f) => f.severity === 'error').map((f) => [f.rule, f.line])).toEqual([
    ['unknown-name', 27],
    ['unknown-name', 29],
  ])
  expect(lessons[1].findings).toEqual([])
})

test('--quiet tells errors only', async () => {
  const warned = small.replace('Cut the mat', 'Cut the mat with a craft knife')
  const loud = await foldlore(['check', 'a.md'], { 'a.md': warned })
  const quiet = await foldlore(['check', 'a.md', '--quiet'], { 'a.md': warned })
  expect([loud.code, loud.out.includes('a.md:29:'), quiet.code, quiet.out]).toEqual([0, true, 0, ''])
})

test('a lesson that is not there is told, the others are checked, and the exit code is 3', async () => {
  const { code, out, err } = await foldlore(['check', 'none.md', 'broken.md'], files)
  expect([code, err]).toEqual([
    3,
    'foldlore: Cannot read `none.md`: there is no such file\n  Check the folder and the name\n',
  ])
  expect(out).toContain('broken.md:27:')
})

// Legs of 3 in leave no floor on a card 5 in wide.
test.each([
  ['--closed', '20 x 7 in', 0, 'No findings'],
  ['--units', 'mm', 1, 'A leg of 76 mm leaves no floor on a card 127 mm wide'],
  ['--grid', '2 in', 1, 'A leg of 4 in leaves no floor on a card 4 in wide'],
])('%s changes what is checked', async (option, value, code, told) => {
  const lesson = small
    .replace('fold: side', 'fold: bridge\nleg: 3 in\nspans: {wall: {height: 1 in, at: bottom}}')
    .replace('on: front', 'on: floor')
    .replace('the front', 'the floor')
    .replace(
      'tape.\n',
      'tape. Cut the wall to {wall.size} and stick it on the tabs.\n\n   ::figure[The wall]{show=place of=wall}\n',
    )
  const plain = await foldlore(['check', 'a.md'], { 'a.md': lesson })
  const other = await foldlore(['check', 'a.md', option, value], { 'a.md': lesson })
  expect(plain.out).toContain('A leg of 3 in leaves no floor on a card 5 in wide')
  expect(other.out).toContain(told)
  expect(other.code).toBe(code)
})

test('a picture that is not there is told before anything is printed', async () => {
  const lesson = `${small}\n![The tide](tide.png)\n`
  const { out } = await foldlore(['check', 'in/a.md'], { 'in/a.md': lesson })
  expect(out).toMatch(/^in\/a\.md:33:1 \w+ .*`tide\.png`.*\n/)
  const there = await foldlore(['check', 'in/a.md'], {
    'in/a.md': lesson,
    'in/tide.png': '\x89PNG\r\n\x1a\n',
  })
  expect(there.out).not.toBe(out)
})

test('a figure that cannot be drawn is told too', async () => {
  const lesson = `${small}\n   ::figure[The envelope]{show=envelope}\n`
  const { code, out } = await foldlore(['check', 'a.md'], { 'a.md': lesson })
  expect(out).toMatch(/^a\.md:33:4 \w+ .*envelope/)
  expect(code).toBe(out.includes(' error ') ? 1 : 0)
})

test('a finding cannot steer the terminal', async () => {
  const { out } = await foldlore(['check', 'a.md'], {
    'a.md': small.replace('{mat.size}', '{m\u001b[2Jat.size}'),
  })
  expect(out).toContain('a.md:29:')
  expect(out).not.toContain('\u001b')
})

test('a lesson is checked in each size that it is offered in, unless one size or unit is asked for', async () => {
  const offered = { 'h.md': harbour.replace(/^sizes:.*$/m, 'sizes: [4 x 4 in]') }
  const { code, out } = await foldlore(['check', 'h.md'], offered)
  expect(code).toBe(1)
  expect(out).toMatch(
    /^h\.md:6:9 error At 4 × 4 in: 7 letters take .* \(letters-too-wide\)\n {2}.*`widths: 7\/16 in`/,
  )
  for (const option of [
    ['--closed', '7 x 5 in'],
    ['--units', 'in'],
  ])
    expect((await foldlore(['check', 'h.md', ...option], offered)).code).toBe(0)
})
