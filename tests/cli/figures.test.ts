import { expect, test } from 'vitest'
import { small } from './lessons.ts'
import { foldlore, foldloreIn, memory } from './memory.ts'

const bare = small.replace(/\n::figure.*\n/, '')
const directive = '::figure[The base, scored]{show=flat of=base}'
const drawn = bare.replace('{base.scores}.\n', `{base.scores}.\n\n   ${directive}\n`)

test('a step without a figure is a hint, with the line to paste, and the exit code stays 0', async () => {
  const { code, out } = await foldlore(['check', 'a.md'], { 'a.md': bare })
  expect(code).toBe(0)
  expect(out).toContain('a.md:27:1 hint Step 1 has no figure and could have one (step-without-figure)')
  expect(out).toContain(`\`${directive}\``)
})

test('--figures auto puts it into the lesson below the text of its step, and does nothing a second time', async () => {
  const world = memory({ 'a.md': bare })
  expect(await foldloreIn(world, ['check', '--figures', 'auto', 'a.md'])).toBe(0)
  expect(world.text('a.md')).toBe(drawn)
  expect(world.out()).toBe(`a.md: step 1 has a figure now: \`${directive}\`\nNo findings in 1 lesson.\n`)
  const before = world.disk.get('a.md')
  expect(await foldloreIn(world, ['check', '--figures', 'auto', 'a.md'])).toBe(0)
  expect(world.disk.get('a.md')).toBe(before)
  expect([...world.disk.keys()]).toEqual(['a.md'])
})

test('--figures auto --json says which figures', async () => {
  const { out } = await foldlore(['check', '--figures', 'auto', 'a.md', '--json'], { 'a.md': bare })
  expect(JSON.parse(out).lessons).toEqual([{ file: 'a.md', figures: [{ step: 1, directive }], findings: [] }])
})

test('--figures list tells each figure at its step', async () => {
  const two = bare.replace('on: front, border: 1/8 in', 'on: front, border: {sides: 1/4 in, ends: 1/8 in}')
  const all = await foldlore(['check', 'a.md'], { 'a.md': two })
  const each = await foldlore(['check', '--figures', 'list', 'a.md'], { 'a.md': two })
  expect(all.out).toContain('a.md:27:1 hint Steps 1 and 2 have no figure')
  expect(each.out.match(/^a\.md:\d+:\d+ hint Step \d/gm)).toEqual([
    'a.md:27:1 hint Step 1',
    'a.md:29:1 hint Step 2',
  ])
  expect(each.out).toContain('`::figure[The mat, in place]{show=place of=mat}`')
})

test('handout --figures auto draws them in the print and leaves the lesson as it is', async () => {
  const argv = ['handout', 'a.md', '-o', 'page.html']
  const plain = await foldlore(argv, { 'a.md': bare })
  const world = memory({ 'a.md': bare })
  expect(await foldloreIn(world, [...argv, '--figures', 'auto'])).toBe(0)
  expect(world.text('a.md')).toBe(bare)
  expect(plain.text('page.html')).not.toContain('figure-flat')
  expect(world.text('page.html')).toContain('figure-flat')
  expect(world.err()).not.toContain('step-without-figure')
  // The very print of the lesson with the figure in its file.
  expect(world.text('page.html')).toBe((await foldlore(argv, { 'a.md': drawn })).text('page.html'))
})

test('handout lists no figures', async () => {
  const { code, err } = await foldlore(['handout', 'a.md', '--figures', 'list'], { 'a.md': bare })
  expect([code, err]).toEqual([2, expect.stringContaining('Only `check` lists figures')])
})
