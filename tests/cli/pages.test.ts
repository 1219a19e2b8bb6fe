import { expect, test } from 'vitest'
import { pagesFor } from '../../src/cli/pages.ts'
import { parse } from '../../src/cli/parse.ts'
import { UsageError } from '../../src/cli/problems.ts'
import { memory } from './memory.ts'

const pages = (argv: readonly string[], what = '') => {
  const { options } = parse(['handout', 'lessons/tide.md', ...argv])
  return pagesFor('lessons/tide.md', what, options, memory({ 'out.d/a.txt': '' }).outside)
}

test.each([
  [[], 'lessons/tide'],
  [['-o', 'out'], 'out/tide'],
  [['-o', 'out.d'], 'out.d/tide'],
  [['-o', 'new.d/'], 'new.d/tide'],
  [['--closed', 'A6 landscape'], 'lessons/tide-a6-landscape'],
  [['--closed', '7 1/2 × 5 in', '-o', 'o'], 'o/tide-7-1-2-5-in'],
  [['--units=mm', '--paper=letter', '-o', 'o'], 'o/tide-mm-letter'],
  [['--grid=1/8 in', '--theme=plain', '-o', 'o'], 'o/tide-ruler-plain'],
])('%j goes to a folder, as page and PDF', async (argv, out) => {
  expect(await pages(argv)).toEqual({ out, html: true, pdf: true })
})

test.each([
  ['a.pdf', { out: 'a', html: false, pdf: true }],
  ['in/b.c.HTML', { out: 'in/b.c', html: true, pdf: false }],
])('-o %s is that file only', async (output, expected) => {
  expect(await pages(['-o', output])).toEqual(expected)
})

test('a kit list lies beside the handout, not on it', async () => {
  expect(await pages(['-o', 'o'], 'kit')).toMatchObject({ out: 'o/tide-kit' })
})

test('another kind of file is refused', async () => {
  await expect(pages(['-o', 'a.docx'])).rejects.toThrow(UsageError)
})
