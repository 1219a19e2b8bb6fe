import { expect, test } from 'vitest'
import { htmlMark } from '../../src/publish/write.ts'
import { broken, small } from './lessons.ts'
import { foldlore, foldloreIn, memory } from './memory.ts'

const files = { 'in/small.md': small, 'in/broken.md': broken }
const handout = (...argv: string[]) => foldlore(['handout', 'in/small.md', '-o', 'a.html', ...argv], files)

test('-o a page: that page only, and where it is', async () => {
  const { code, out, err, disk, text } = await handout()
  expect([code, out, err]).toEqual([0, '', 'Wrote a.html\n'])
  expect([...disk.keys()]).toEqual(['in/small.md', 'in/broken.md', 'a.html'])
  expect(text('a.html')).toContain(htmlMark)
  expect(text('a.html')).toContain('<title>Low tide</title>')
})

test('every option changes the page', async () => {
  const plain = (await handout()).text('a.html')
  const options = [
    ['--closed', '4 x 6 in'],
    ['--units', 'mm'],
    ['--grid', '1/8 in'],
    ['--paper', 'letter'],
  ]
  const pages = await Promise.all(options.map(async (option) => (await handout(...option)).text('a.html')))
  expect(new Set([plain, ...pages]).size).toBe(5)
  expect(pages[3]).toContain('size:215.9mm 279.4mm')
})

test('--quiet does not say where it is', async () => {
  expect(await handout('--quiet')).toMatchObject({ code: 0, out: '', err: '' })
})

test('a theme that does not exist gets the nearest one: exit code 2, nothing written', async () => {
  const { code, err, disk } = await handout('--theme', 'step-shet')
  expect([code, disk.has('a.html')]).toEqual([2, false])
  expect(err).toMatch(/^foldlore: Unexpected theme `step-shet`.*\n {2}Write `step-sheet`\n$/)
})

test('without a browser the page is there all the same: exit code 3', async () => {
  const world = memory(files, { FOLDLORE_BROWSER: '/none/chrome' })
  expect(await foldloreIn(world, ['handout', 'in/small.md'])).toBe(3)
  expect([...world.disk.keys()]).toContain('in/small.html')
  expect(world.err()).toMatch(/^Wrote in\/small\.html\nfoldlore: There is no browser at `\/none\/chrome`\n/)
})

test('a lesson with errors is not printed: exit code 1', async () => {
  const { code, out, err, disk } = await foldlore(['handout', 'in/broken.md', '-o', 'a.html'], files)
  expect([code, out, disk.has('a.html')]).toEqual([1, '', false])
  expect(err.match(/^in\/broken\.md:\d+:\d+ error .*$/gm)).toHaveLength(2)
})

test('a page that somebody else made is kept: exit code 2; --force overwrites it', async () => {
  const taken = { ...files, 'a.html': 'mine' }
  const refused = await foldlore(['handout', 'in/small.md', '-o', 'a.html'], taken)
  expect([refused.code, refused.text('a.html')]).toEqual([2, 'mine'])
  expect(refused.err).toBe(
    'foldlore: `a.html` was not made by foldlore, so it is not overwritten\n  Name another place with `-o`, or overwrite it with `--force`\n',
  )
  const forced = await foldlore(['handout', 'in/small.md', '-o', 'a.html', '--force'], taken)
  expect([forced.code, forced.text('a.html').includes(htmlMark)]).toEqual([0, true])
})
