import { expect, test } from 'vitest'
import { broken, small } from './lessons.ts'
import { foldloreIn, memory } from './memory.ts'

const world = () => memory({ 'low.md': small, 'broken.md': broken, 'out/mine.html': '<p>Mine</p>' })

test('a PDF does not move, and a page of somebody else stays', async () => {
  const here = world()
  expect(await foldloreIn(here, ['motion', 'low.md', '-o', 'low.pdf'])).toBe(2)
  expect(await foldloreIn(here, ['motion', 'low.md', '-o', 'out/mine.html'])).toBe(2)
  expect(here.text('out/mine.html')).toBe('<p>Mine</p>')
})

test('a lesson with errors has no page', async () => {
  const here = world()
  expect(await foldloreIn(here, ['motion', 'broken.md', '-o', 'out'])).toBe(1)
  expect([...here.disk.keys()]).toEqual(['low.md', 'broken.md', 'out/mine.html'])
})
