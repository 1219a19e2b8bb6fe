import { expect, test } from 'vitest'
import { openPdf } from '../publish/pdf-reading.ts'
import { broken, small } from './lessons.ts'
import { foldloreIn, memory } from './memory.ts'

const world = () => memory({ 'low.md': small, 'broken.md': broken })

test('templates as a page and a PDF beside the lesson, named after the print', async () => {
  const here = world()
  expect(await foldloreIn(here, ['template', 'low.md', '--paper', 'letter', '--units', 'mm'])).toBe(0)
  expect(here.text('low-template-mm-letter.html')).toContain('254 × 177 mm')
  const pdf = await openPdf(here.disk.get('low-template-mm-letter.pdf') ?? new Uint8Array())
  expect(pdf.numPages).toBeGreaterThan(0)
  // Once more: what foldlore made may be written over.
  expect(await foldloreIn(here, ['template', 'low.md', '--paper', 'letter', '--units', 'mm'])).toBe(0)
})

test('only the page, when a page is named', async () => {
  const here = world()
  expect(await foldloreIn(here, ['template', 'low.md', '-o', 'out/t.html', '--json'])).toBe(0)
  expect(JSON.parse(here.out())).toEqual({ written: ['out/t.html'] })
  expect([...here.disk.keys()]).toEqual(['low.md', 'broken.md', 'out/t.html'])
})

test('a lesson with errors has no templates', async () => {
  const here = world()
  expect(await foldloreIn(here, ['template', 'broken.md'])).toBe(1)
  expect([...here.disk.keys()]).toEqual(['low.md', 'broken.md'])
})
