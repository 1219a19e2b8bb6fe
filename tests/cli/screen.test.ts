import { expect, test } from 'vitest'
import { broken, small } from './lessons.ts'
import { foldloreIn, memory } from './memory.ts'

const world = () => memory({ 'low.md': small, 'broken.md': broken, 'out/mine.html': '<p>Mine</p>' })

test('a PDF has no clock, and a page of somebody else stays', async () => {
  const here = world()
  expect(await foldloreIn(here, ['screen', 'low.md', '-o', 'low.pdf'])).toBe(2)
  expect(await foldloreIn(here, ['screen', 'low.md', '-o', 'out/mine.html'])).toBe(2)
  expect(here.text('out/mine.html')).toBe('<p>Mine</p>')
})

test('a lesson with errors has no page', async () => {
  const here = world()
  expect(await foldloreIn(here, ['screen', 'broken.md', '-o', 'out'])).toBe(1)
  expect(here.err()).toContain('broken.md:27')
  expect([...here.disk.keys()]).toEqual(['low.md', 'broken.md', 'out/mine.html'])
})
