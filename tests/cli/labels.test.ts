import { expect, test } from 'vitest'
import { openPdf, pageTexts } from '../publish/pdf-reading.ts'
import { harbour } from './lessons.ts'
import { foldloreIn, memory } from './memory.ts'

const world = (more = '') =>
  memory({
    'saturday.yaml': `title: Saturday\nlesson: harbour.md\npeople: [Ada, Bo, Cy]\nspare: 1\n${more}`,
    'harbour.md': harbour,
  })

test('a label for each kit, beside the class file', async () => {
  const here = world()
  expect(await foldloreIn(here, ['labels', 'saturday.yaml'])).toBe(0)
  const pdf = await openPdf(here.disk.get('saturday-labels.pdf') ?? new Uint8Array())
  const [text] = await pageTexts(pdf)
  for (const name of ['Ada', 'Bo', 'Cy', 'spare kit 1', 'Harbour lights']) expect(text).toContain(name)
})

test('--json says what stands on them', async () => {
  const here = world()
  expect(await foldloreIn(here, ['labels', 'saturday.yaml', '-o', 'l.html', '--json'])).toBe(0)
  const { labels, written } = JSON.parse(here.out())
  expect(labels.map(({ name }: { name: string }) => name)).toEqual(['Ada', 'Bo', 'Cy', 'spare kit 1'])
  expect(written).toEqual(['l.html'])
})

test('a sheet with too many labels is refused with a cure', async () => {
  const here = world('labels: {columns: 9, rows: 30}\n')
  expect(await foldloreIn(here, ['labels', 'saturday.yaml', '-o', 'l.html'])).toBe(3)
  expect(here.err()).toMatch(/labels of this sheet are too small[\s\S]*columns: 2, rows: 4/)
  expect(here.disk.has('l.html')).toBe(false)
})
