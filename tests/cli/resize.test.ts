import { expect, test } from 'vitest'
import { broken, harbour, small } from './lessons.ts'
import { foldlore } from './memory.ts'

const files = { 'small.md': small, 'broken.md': broken, 'harbour.md': harbour }

test('only what the size says is written anew, and the new lesson says so by itself', async () => {
  const { code, out } = await foldlore(['resize', 'small.md', '--closed', '4 x 6 in', '--quiet'], files)
  expect(code).toBe(0)
  expect(out).toBe(small.replace('closed: 5 x 7 in', 'closed: 4 x 6 in'))
})

test('a resized lesson measures as the lesson does with the same wish', async () => {
  const wish = ['--closed', 'A6 landscape']
  const { out } = await foldlore(['resize', 'harbour.md', ...wish, '--quiet'], files)
  const wished = await foldlore(['measure', 'harbour.md', ...wish, '--json'], files)
  const resized = await foldlore(['measure', 'a.md', '--json'], { 'a.md': out })
  const cards = (answer: { out: string }) => JSON.parse(answer.out).cards
  expect(cards(resized)).toEqual(cards(wished))
})

test.each([
  ['--units', 'mm'],
  ['--grid', '1/8 in'],
])('%s changes the lesson too', async (option, value) => {
  const { code, out } = await foldlore(['resize', 'small.md', option, value, '--quiet'], files)
  expect([code, out === small]).toEqual([0, false])
})

test('nothing wished: exit code 2', async () => {
  const { code, out, err } = await foldlore(['resize', 'small.md'], files)
  expect([code, out]).toEqual([2, ''])
  expect(err).toContain('Write for example `--closed "A6 landscape"`')
})

test('-o never overwrites the lesson itself without --force', async () => {
  const argv = ['resize', 'small.md', '--closed', '4 x 6 in', '-o', 'small.md']
  const refused = await foldlore(argv, files)
  expect([refused.code, refused.text('small.md')]).toEqual([2, small])
  const forced = await foldlore([...argv, '--force'], files)
  expect([forced.code, forced.text('small.md').includes('closed: 4 x 6 in')]).toEqual([0, true])
})

test('a lesson with errors is not resized: exit code 1', async () => {
  const { code, out, err } = await foldlore(['resize', 'broken.md', '--closed', '4 x 6 in'], files)
  expect([code, out]).toEqual([1, ''])
  expect(err).toContain('(unknown-name)')
})

test('a byte order mark and line ends of another system are kept', async () => {
  const windows = `\ufeff${small.replaceAll('\n', '\r\n')}`
  const { out } = await foldlore(['resize', 'a.md', '--closed', '4 x 6 in', '--quiet'], { 'a.md': windows })
  expect(out).toBe(windows.replace('closed: 5 x 7 in', 'closed: 4 x 6 in'))
})

test('--json gives the lesson and what was found in it', async () => {
  const { code, out } = await foldlore(['resize', 'small.md', '--closed', '4 x 6 in', '--json'], files)
  expect(code).toBe(0)
  expect(JSON.parse(out)).toEqual({
    text: small.replace('closed: 5 x 7 in', 'closed: 4 x 6 in'),
    findings: [],
  })
})

test('--json of a size that does not work says why, with exit code 1', async () => {
  const { code, out } = await foldlore(['resize', 'harbour.md', '--closed', '1 x 5 in', '--json'], files)
  expect(code).toBe(1)
  expect(JSON.parse(out).findings[0]).toMatchObject({ rule: 'impossible-size', severity: 'error' })
})
