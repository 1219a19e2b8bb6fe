import { expect, test } from 'vitest'
import { broken, harbour } from './lessons.ts'
import { foldlore } from './memory.ts'

const files = { 'harbour.md': harbour, 'broken.md': broken }
const line = (out: string, name: string) =>
  out.split('\n').find((text) => text.trimStart().startsWith(`${name}  `))

// By hand, no source: 7 in are 177.8 mm, cut 177; a leg of 3/4 in is 19.05 mm, cut 19.
test('--explain says of each number where it comes from, how far it is off, and what it follows', async () => {
  const { code, out, err } = await foldlore(['measure', 'harbour.md', '--explain', '--units', 'mm'], files)
  expect([code, err]).toEqual([0, ''])
  expect(line(out, 'closed.width')).toMatch(/ 177 mm +0.8 mm less +width +written in line \d+: `7 in`; down/)
  expect(line(out, 'leg')).toMatch(
    / 19 mm +0.05 mm less +fixed +written in line \d+: `3\/4 in`; to the nearest/,
  )
  expect(line(out, 'tab')).toMatch(/ fixed +usual for this fold: `leg`/)
  expect(line(out, 'floor.width')).toMatch(/ 139 mm +0.7 mm less +width +closed.width - 2 \* leg$/)
  expect(line(out, 'base.height')).toMatch(/ 127 mm +exact +height +closed.height$/)
})

test('it fits a terminal of 100 columns', async () => {
  const { out } = await foldlore(['measure', 'harbour.md', '--explain'], files)
  const longest = Math.max(...out.split('\n').map((text) => text.length))
  expect(longest).toBeGreaterThan(60)
  expect(longest).toBeLessThanOrEqual(100)
})

test('--json has the same besides the measures, and only when it is asked for', async () => {
  const json = async (...argv: string[]) =>
    JSON.parse((await foldlore(['measure', 'harbour.md', '--json', ...argv], files)).out)
  const [plain, more] = [await json(), await json('--explain')]
  const { explained, ...measures } = more.cards[0]
  expect({ ...more, cards: [measures] }).toEqual(plain)
  expect(explained.find((one: { name: string }) => one.name === 'floor.width')).toEqual({
    name: 'floor.width',
    value: { mm: 139.7, in: 5.5, text: '5 1/2 in' },
    exact: { mm: 139.7, in: 5.5, text: '5 1/2 in' },
    off: { mm: 0, in: 0 },
    from: 'formula',
    formula: 'closed.width - 2 * leg',
    rounding: 'none',
    follows: [{ of: 'width', share: '1' }],
  })
})

test('another size is asked for, not written', async () => {
  const { out } = await foldlore(['measure', 'harbour.md', '--explain', '--closed', '8 x 6 in'], files)
  expect(line(out, 'closed.width')).toMatch(/ 8 in +exact +width +asked for in this print$/)
})

test('a lesson with errors: they are told, and nothing is explained', async () => {
  const { code, out, err } = await foldlore(['measure', 'broken.md', '--explain'], files)
  expect([code, out]).toEqual([1, ''])
  expect(err).toMatch(/error .* \(unknown-name\)\n/)
})

test('-o writes it to a file', async () => {
  const { code, text } = await foldlore(['measure', 'harbour.md', '--explain', '-o', 'why.txt'], files)
  expect(code).toBe(0)
  expect(text('why.txt')).toContain('Where every number comes from.')
})
