import { expect, test } from 'vitest'
import { harbour, small } from './lessons.ts'
import { foldlore } from './memory.ts'

const stocks = ['dark blue card', 'patterned paper', 'vellum', 'grey card', 'white card', 'envelope paper']
const saturday = `title: Saturday
lesson: harbour.md
people: 5
start: 10:00
end: 13:00
sheets:
${stocks.map((stock) => `  ${stock}: 12 x 12 in`).join('\n')}
supplies:
  pearl dots: {pack: 100, price: 1.80}
`
const check = (text: string, ...argv: string[]) =>
  foldlore(['check', 'in/saturday.yaml', ...argv], {
    'in/saturday.yaml': text,
    'in/harbour.md': harbour,
    'small.md': small,
  })

test('a clean class file: nothing found in it nor in its lesson', async () => {
  const { code, out, err } = await check(saturday, '--quiet')
  expect([code, out, err]).toEqual([0, '', ''])
  expect((await check(saturday, 'small.md')).out).toMatch(/ in 1 class file and 2 lessons\.\n$/)
})

test.each([
  [
    'a key that nobody knows',
    ['end:', 'ende:'],
    1,
    /^in\/saturday\.yaml:5:1 error .*`ende`.*\(unknown-key\)/,
  ],
  [
    'a lesson that is not there',
    ['harbour.md', 'none.md'],
    1,
    /^in\/saturday\.yaml:2:9 error .*no such file \(no-lesson\)/,
  ],
  [
    'paper that is too small',
    ['vellum: 12 x 12 in', 'vellum: 2 x 2 in'],
    1,
    /^in\/saturday\.yaml:9:11 error 5 × `beam` .*\(not-cut\)/,
  ],
  [
    'paper that is not listed',
    ['  vellum: 12 x 12 in\n', ''],
    1,
    /error 5 × `beam` of “Harbour lights” cannot be cut: .*\(not-cut\)/,
  ],
  [
    'time that does not reach',
    ['13:00', '10:30'],
    0,
    /^in\/saturday\.yaml:5:1 warning The class goes on to 11:\d\d, \d.* beyond its end \(class-time\)\n {2}Write `end: 11:/,
  ],
  [
    'a supply that no lesson uses up',
    ['pearl dots', 'pearl dot'],
    0,
    /^in\/saturday\.yaml:14:3 warning .*`pearl dot`.*\(not-needed\)/,
  ],
  [
    'more people than a class has',
    ['people: 5', 'people: 1000000000'],
    1,
    /^in\/saturday\.yaml:3:9 error `people` can be 2000 at most \(too-many\)/,
  ],
] as const)('%s', async (_, [from, to], code, told) => {
  const { out, code: was } = await check(saturday.replace(from, to))
  expect(out).toMatch(new RegExp(told.source, 'm'))
  expect(was).toBe(code)
})

test('a lesson is checked in the size of the class, and told by its own file', async () => {
  const { code, out } = await check(
    saturday.replace('lesson: harbour.md', 'lessons: [{lesson: harbour.md, closed: 2 x 2 in}]'),
  )
  expect(code).toBe(1)
  expect(out).toMatch(/^in\/harbour\.md:\d+:\d+ error /m)
})

test('a lesson that is also named by itself is told once', async () => {
  const warned = harbour.replace('craft knife: 1 per 2\n', '')
  const { out } = await foldlore(['check', 'in/saturday.yaml', './in/harbour.md', '--units', 'in'], {
    'in/saturday.yaml': saturday,
    'in/harbour.md': warned,
    './in/harbour.md': warned,
  })
  const lines = out.split('\n').filter((line) => line.includes('harbour.md:'))
  expect(lines.length).toBeGreaterThan(0)
  expect(new Set(lines).size).toBe(lines.length)
  expect(out).toContain('in 1 class file and 1 lesson.')
})

test('--json gives class files apart from lessons', async () => {
  const { out } = await check(saturday.replace('13:00', '10:30'), '--json')
  const { classes, lessons } = JSON.parse(out)
  expect(classes).toMatchObject([
    { file: 'in/saturday.yaml', findings: [{ rule: 'class-time', line: 5, column: 1 }] },
  ])
  expect(lessons.map((lesson: { file: string }) => lesson.file)).toEqual(['in/harbour.md'])
})

test('a class file is not changed as lessons are', async () => {
  const { code, err } = await check(saturday, '--fix')
  expect([code, err]).toEqual([
    2,
    'foldlore: `--fix` is for lessons, and `in/saturday.yaml` is a class file\n  Name its lessons\n',
  ])
})
