import { expect, test } from 'vitest'
import { harbour } from './lessons.ts'
import { foldlore } from './memory.ts'

const saturday = `title: Saturday
lesson: harbour.md
people: 14
start: 10:00
end: 10:30
breaks: [{at: 10:10, for: 5 min, name: tea}]
`
const files = { 'class/saturday.yaml': saturday, 'class/harbour.md': harbour }
const sheet = (...argv: string[]) => foldlore(['runsheet', 'class/saturday.yaml', ...argv], files)

test('a class by the clock, in the terminal', async () => {
  const { code, out } = await sheet('--quiet')
  expect(code).toBe(0)
  expect(out).toMatch(/^Run sheet: Saturday\nIt ends at \d\d:\d\d/)
  expect(out).toMatch(/\n {2}10:00 +\d+ +1 /)
  expect(out).toMatch(/ 5 +tea\n/)
})

test('--json gives times as a program reads them', async () => {
  const { out } = await sheet('--json')
  const { courses, end } = JSON.parse(out)
  expect(end).toBe('10:30')
  expect(courses[0].slots[0]).toMatchObject({ at: '10:00', what: 'step', step: 1, lesson: 'Harbour lights' })
})

test('as comma-separated values and as Markdown', async () => {
  const csv = await sheet('-o', 'out.csv')
  expect(csv.text('out.csv')).toMatch(/^\ufeffat,minutes,step,stage,what,lesson\r\n10:00,/)
  const md = await sheet('-o', 'out.md')
  expect(md.text('out.md')).toMatch(/^# Run sheet: Saturday\n/)
})

test('a lesson that is not there is told at its place in the class file', async () => {
  const { code, err } = await foldlore(['runsheet', 'class/saturday.yaml'], {
    'class/saturday.yaml': saturday,
  })
  expect(code).toBe(1)
  expect(err).toContain(
    'class/saturday.yaml:2:9 error Cannot read `class/harbour.md`: there is no such file (no-lesson)',
  )
})

test('a class file with a mistake is told line by line', async () => {
  const { code, err } = await foldlore(['runsheet', 'class/saturday.yaml'], {
    ...files,
    'class/saturday.yaml': `${saturday}lunch: 12:00\n`,
  })
  expect(code).toBe(1)
  expect(err).toContain(
    'class/saturday.yaml:7:1 error Unexpected key `lunch` in the class file (unknown-key)',
  )
})

test('a lesson in the place of a class file is a mistake of the command line', async () => {
  const { code, err } = await foldlore(['runsheet', 'class/harbour.md'], files)
  expect(code).toBe(2)
  expect(err).toMatch(/`class\/harbour\.md` is no class file\n {2}A class file is a few lines of YAML/)
})
