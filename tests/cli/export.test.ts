import { expect, test } from 'vitest'
import { broken, small } from './lessons.ts'
import { foldloreIn, memory } from './memory.ts'

const world = () => memory({ 'low.md': small, 'broken.md': broken })
const files = ({ disk }: ReturnType<typeof memory>) =>
  [...disk.keys()].filter((path) => !path.endsWith('.md')).sort()

test('a file a piece in a folder, named after the lesson and what was wished', async () => {
  const here = world()
  expect(await foldloreIn(here, ['export', 'low.md', '--as', 'svg', '--units', 'mm', '-o', 'out'])).toBe(0)
  expect(files(here)).toEqual(['out/low-mm-base.svg', 'out/low-mm-mat.svg'])
  expect(here.err()).toContain('Wrote out/low-mm-base.svg\n')
  expect(here.text('out/low-mm-base.svg')).toContain('width="254mm" height="177mm"')
})

test('all pieces in the file that is named', async () => {
  const here = world()
  expect(await foldloreIn(here, ['export', 'low.md', '--as', 'dxf', '-o', 'out/all.dxf', '--json'])).toBe(0)
  expect(files(here)).toEqual(['out/all.dxf'])
  expect(JSON.parse(here.out())).toEqual({ written: ['out/all.dxf'] })
})

test('a FOLD file holds the card, and is written again over itself', async () => {
  const here = world()
  for (const _ of [1, 2]) expect(await foldloreIn(here, ['export', 'low.md', '--as', 'fold'])).toBe(0)
  expect(files(here)).toEqual(['low.fold'])
  expect(JSON.parse(here.text('low.fold'))).toMatchObject({ file_spec: 1.2, file_title: 'Low tide' })
})

test('what another made is not overwritten', async () => {
  const here = memory({ 'low.md': small, 'low.fold': 'mine' })
  expect(await foldloreIn(here, ['export', 'low.md', '--as', 'fold'])).toBe(2)
  expect(here.text('low.fold')).toBe('mine')
  expect(await foldloreIn(here, ['export', 'low.md', '--as', 'fold', '--force'])).toBe(0)
})

test.each([
  [['export', 'low.md'], 2, '`export` needs to know for what\n  Write `--as svg`, `--as dxf` or `--as fold`'],
  [['export', 'low.md', '--as', 'svg', '-o', 'x.dxf'], 2, '`x.dxf` is no name for a `.svg` file'],
  [['export', 'low.md', '--as', 'pdf'], 2, 'Unexpected `pdf`, expected svg, dxf, fold, text or md'],
  [
    ['export', 'low.md', '--as', 'md'],
    2,
    '`export` writes no `md`\n  Write `--as svg`, `--as dxf` or `--as fold`',
  ],
  [['export', 'broken.md', '--as', 'svg'], 1, 'broken.md:'],
] as const)('%j', async (argv, code, told) => {
  const here = world()
  expect(await foldloreIn(here, argv)).toBe(code)
  expect(here.err()).toContain(told)
  expect(files(here)).toEqual([])
})
