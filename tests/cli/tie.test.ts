import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { failure, foldlore, foldloreIn, memory } from './memory.ts'

const read = (name: string): string =>
  readFileSync(new URL(`../data/hand-written/${name}.md`, import.meta.url), 'utf8')
const lamp = read('lamp-room')
const tide = read('tide-table')
const awning = read('striped-awning')

describe('tie', () => {
  test('gives the tutorial to the terminal and tells what has become of each number', async () => {
    const { code, out, err, text } = await foldlore(['tie', 'lamp.md'], { 'lamp.md': lamp })
    expect(code).toBe(0)
    expect(out).toContain('| glass | vellum | {glass.size} |')
    expect(out).toContain('{lamp.width} ({lamp.width as mm}) wide')
    expect(out).not.toContain('{glass.size}. Put it')
    expect(err).toMatch(/^25 numbers have a name now, \d+ are left\.\n/)
    expect(err).toMatch(/^ {2}67 +¾" +\{envelope\.flap\} +likely /m)
    expect(err).toContain('The words ask for the size of `glass`, which is 3 3/8 × 4 5/8 in')
    expect(text('lamp.md')).toBe(lamp)
  })

  test('an inch card with a tutorial in centimetres is printed in its own unit, but foam keeps its own', async () => {
    const { out } = await foldlore(['tie', 'awning.md', '--quiet'], { 'awning.md': awning })
    expect(out).toContain(
      'Cut the doorstep, {doorstep.size}. Raise it on foam pads {doorstep.raise as mm} thick',
    )
  })

  test('a metric card whose lesson does not say its unit is read in millimetres, and says so afterwards', async () => {
    const whole = await foldlore(['tie', 'tide.md', '--json'], { 'tide.md': tide })
    const bare = tide.replace(/^---[\s\S]*?---\n/, '')
    const { code, err, out } = await foldlore(['tie', 'tide.md'], { 'tide.md': bare })
    expect(code).toBe(0)
    expect(err).toContain('The front matter says `units: mm` now')
    const body = (text: string): string => text.replace(/^---[\s\S]*?---\n+/, '')
    expect(out).toMatch(/^---\nunits: mm\n---\n/)
    expect(body(out)).toBe(body(JSON.parse(whole.out).text))
  })

  test('writes where -o says; over the tutorial only if -o names it; over another file only with --force', async () => {
    const files = { 'lamp.md': lamp, 'other.md': 'mine\n' }
    const refused = await foldlore(['tie', 'lamp.md', '-o', 'other.md'], files)
    expect([refused.code, refused.text('other.md')]).toEqual([2, 'mine\n'])
    const itself = await foldlore(['tie', 'lamp.md', '-o', './lamp.md'], files)
    expect(itself.code).toBe(0)
    const written = await foldlore(['tie', 'lamp.md', '-o', 'other.md', '--force'], files)
    expect(written.text('other.md')).toContain('{glass.size}')
    expect(written.out).toContain('Placed')
  })

  test('--json says the same', async () => {
    const { code, out } = await foldlore(['tie', 'lamp.md', '--json'], { 'lamp.md': lamp })
    const answer = JSON.parse(out)
    expect(code).toBe(0)
    expect(answer.placed).toHaveLength(25)
    expect(answer.placed[0]).toEqual({
      line: 20,
      column: 14,
      number: '4¼ × 5½ in',
      measure: '{closed.size}',
      confidence: 'sure',
      why: expect.any(String),
    })
    expect(answer.left.filter(({ mistake }: { mistake?: string }) => mistake)).toMatchObject([
      { number: '3 3/4″ × 4 5/8″', mistake: 'glass.size' },
    ])
    expect(answer.text).toContain('{glass.size}')
  })

  test('without a card block it says what to add, from the fold and the size that the words name', async () => {
    const bare = lamp.replace(/```card[\s\S]*?```\n/, '')
    const { code, out, err } = await foldlore(['tie', 'lamp.md'], { 'lamp.md': bare })
    expect([code, out]).toEqual([1, ''])
    expect(err).toContain('```card\nfold: gate\nclosed: 4 1/4 x 5 1/2 in\n')
    const unknown = await foldlore(['tie', 'a.md'], { 'a.md': 'Cut it to 6 in.\n' })
    expect([unknown.code, unknown.err.includes('`fold:`')]).toEqual([1, true])
  })

  test('a card with mistakes is told, and nothing is lost', async () => {
    const { code, err, text } = await foldlore(['tie', 'a.md', '-o', 'b.md'], {
      'a.md': lamp.replace('fold: gate', 'fold: gaate'),
    })
    expect(code).toBe(1)
    expect(err).toContain('gaate')
    expect(text('a.md')).toContain('gaate')
  })
})

describe('check --fix', () => {
  test('writes the sure names into the file, tells how many and what is left, and does nothing the second time', async () => {
    const world = memory({ 'lamp.md': lamp })
    expect(await foldloreIn(world, ['check', '--fix', 'lamp.md'])).toBe(0)
    expect(world.out()).toMatch(/^lamp\.md:20:14 fixed `4¼ × 5½ in` is `\{closed\.size\}` now: /)
    expect(world.out()).toMatch(/^lamp\.md: \d+ numbers have names now$/m)
    expect(world.out()).toContain('`3 3/4″ × 4 5/8″` is not the size of `glass`')
    const fixed = world.text('lamp.md')
    expect(fixed).toContain('{glass.size} |')
    // Likely ones are left to the teacher.
    expect(fixed).toContain('They are ¾" wide')
    const again = memory({ 'lamp.md': fixed })
    await foldloreIn(again, ['check', '--fix', 'lamp.md'])
    expect(again.out()).not.toContain('fixed')
    expect(again.text('lamp.md')).toBe(fixed)
  })

  test('--json says what was done', async () => {
    const { out } = await foldlore(['check', '--fix', '--json', 'lamp.md'], { 'lamp.md': lamp })
    const [lesson] = JSON.parse(out).lessons
    expect(lesson.fixed[0]).toMatchObject({ line: 20, number: '4¼ × 5½ in', measure: '{closed.size}' })
    expect(lesson.findings.length).toBeGreaterThan(0)
  })

  test('a disk that is full loses nothing', async () => {
    const world = memory({ 'lamp.md': lamp })
    const full = { ...world.outside, create: async () => Promise.reject(failure('ENOSPC')) }
    expect(await foldloreIn({ ...world, outside: full }, ['check', '--fix', 'lamp.md'])).toBe(3)
    expect(world.text('lamp.md')).toBe(lamp)
  })

  test('without --fix nothing is written', async () => {
    const { text } = await foldlore(['check', 'lamp.md'], { 'lamp.md': lamp })
    expect(text('lamp.md')).toBe(lamp)
  })
})
