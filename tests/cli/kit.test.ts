import { expect, test } from 'vitest'
import { htmlMark } from '../../src/publish/our-marks.ts'
import { kitShape } from '../workshop/contract.ts'
import { broken, harbour, small } from './lessons.ts'
import { foldlore, foldloreIn, memory } from './memory.ts'

const files = { 'harbour.md': harbour, 'small.md': small, 'broken.md': broken }
const kit = (...argv: string[]) =>
  foldlore(['kit', 'harbour.md', '--people', '14', '--spare', '2', ...argv], files)

test('the list of a class, in the terminal', async () => {
  const { code, out, err } = await kit('--quiet')
  expect([code, err]).toEqual([0, ''])
  expect(out).toMatch(/^Kit list: Harbour lights\nFor 14 people and 2 spare kits: 16 kits\.\n/)
  expect(out).toMatch(/\n {2}side strip +32 {2}3\/4 × 5 in +patterned paper\n/)
  // 4 · 5 in of tape for each of 16.
  expect(out).toMatch(/\n {2}double-sided tape +320 in +8\.9 yd\n/)
})

test('--json has the promised shape and the numbers of the same class', async () => {
  const { code, out } = await kit('--json')
  const { people, spare, each, shared, tutor, buy } = kitShape.parse(JSON.parse(out))
  expect([code, people, spare]).toEqual([0, 14, 2])
  expect(each).toContainEqual({
    item: 'backdrop',
    kind: 'piece',
    count: 1,
    size: {
      width: { mm: 136.525, in: 5.375, text: '5 3/8 in' },
      height: { mm: 127, in: 5, text: '5 in' },
    },
    stock: 'patterned paper',
  })
  expect(each).toContainEqual({
    item: 'double-sided tape',
    kind: 'length',
    length: { mm: 508, in: 20, text: '20 in' },
  })
  // 14 / 3, 14 / 2 and 14 / 7, rounded up.
  expect(shared.map((s) => [s.count, s.rule])).toEqual([
    [5, '1 per 3'],
    [7, '1 per 2'],
    [7, '1 per 2'],
    [7, '1 per 2'],
    [7, '1 per 2'],
    [2, '1 per 7'],
    [5, '1 per 3'],
  ])
  expect(tutor).toEqual([{ item: 'finished sample', count: 1 }])
  expect(buy).toEqual([
    { item: 'double-sided tape', need: { mm: 8128, in: 320, text: '320 in' } },
    { item: 'pearl dots', need: 80 },
  ])
})

test('without spare kits there are as many as people', async () => {
  const { out } = await foldlore(['kit', 'small.md', '--people', '3'], files)
  expect(out).toContain('\nFor 3 people: 3 kits.\n')
})

test.each([
  ['--closed', '6 x 6 in'],
  ['--units', 'mm'],
  ['--grid', '1/8 in'],
  ['--spare', '5'],
  ['--people', '20'],
])('%s %s changes the list', async (option, value) => {
  const [plain, other] = [await kit('--json'), await kit('--json', option, value)]
  expect([other.code, other.out === plain.out]).toEqual([0, false])
})

test('without people there is no list: exit code 2', async () => {
  const { code, out, err } = await foldlore(['kit', 'small.md'], files)
  expect([code, out]).toEqual([2, ''])
  expect(err).toMatch(
    /^foldlore: `kit` needs to know how many people come\n {2}Write for example `--people 14`, or name a class file/,
  )
})

test('a lesson with errors has no list: exit code 1', async () => {
  const { code, out, err } = await foldlore(['kit', 'broken.md', '--people', '3'], files)
  expect([code, out]).toEqual([1, ''])
  expect(err).toContain('(unknown-name)')
})

test('-o a Markdown, text or HTML file gives that kind', async () => {
  expect((await kit('-o', 'k.md')).text('k.md')).toMatch(/^# Kit list: Harbour lights\n/)
  expect((await kit('-o', 'k.txt')).text('k.txt')).toMatch(/^Kit list: Harbour lights\n/)
  const page = await kit('-o', 'k.html')
  expect([page.code, page.err]).toEqual([0, 'Wrote k.html\n'])
  expect(page.text('k.html')).toContain(htmlMark)
  expect(page.text('k.html')).toMatch(
    /<th scope="row"><span class="piece">base<\/span><\/th><td class="count">1<\/td>/,
  )
  const letter = await kit('-o', 'k.html', '--paper', 'letter')
  expect(letter.text('k.html')).not.toBe(page.text('k.html'))
  expect(await kit('-o', 'k.html', '--theme', 'none')).toMatchObject({ code: 2 })
})

test('without a browser the page is there all the same: exit code 3', async () => {
  const world = memory({ 'in/small.md': small }, { FOLDLORE_BROWSER: '/none/chrome' })
  expect(await foldloreIn(world, ['kit', 'in/small.md', '--people', '3'].concat('-o', 'out'))).toBe(3)
  expect([...world.disk.keys()]).toEqual(['in/small.md', 'out/small-kit.html'])
})

test('a list that somebody else made is kept: exit code 2', async () => {
  const taken = { ...files, 'k.html': 'mine', 'k.md': 'mine' }
  for (const output of ['k.html', 'k.md']) {
    const refused = await foldlore(['kit', 'small.md', '--people', '3', '-o', output], taken)
    expect([refused.code, refused.text(output)]).toEqual([2, 'mine'])
    const forced = await foldlore(['kit', 'small.md', '--people', '3', '-o', output, '--force'], taken)
    expect([forced.code, forced.text(output) === 'mine']).toEqual([0, false])
  }
})
