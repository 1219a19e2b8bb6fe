import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { hasErrors } from '../../../src/length/finding.ts'
import { readSize } from '../../../src/length/text.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { sizeFindings } from '../../../src/lesson/sizes/findings.ts'

const folder = new URL('../../../lessons/', import.meta.url)
const lessonText = (name: string): string => readFileSync(new URL(name, folder), 'utf8')
const findingsOf = (text: string) => {
  const lesson = readLesson(text)
  return sizeFindings(lesson, fillLesson(lesson))
}
/** The harbour, offered in these sizes. */
const harbour = (sizes: string) => lessonText('harbour-lights.md').replace(/^sizes:.*$/m, `sizes: [${sizes}]`)
const told = (text: string) =>
  findingsOf(text).map(({ rule, severity, message, suggestion, place }) => [
    `${place?.line}:${place?.column} ${severity} ${rule}`,
    message,
    suggestion,
  ])

test.each(readdirSync(folder).filter((name) => name.endsWith('.md')))('%s works in all its sizes', (name) => {
  expect(findingsOf(lessonText(name))).toEqual([])
})

test('a size that fails is told at its place, with the widest letters that fit in both units', () => {
  expect(told(harbour('6 x 6 in, 4 x 4 in'))).toEqual([
    [
      '6:19 error letters-too-wide',
      'At 4 × 4 in: 7 letters take 4 3/8 in, but there are 3 1/2 in between the margins',
      'Use letters at most 1/2 in wide, or fewer of them; `widths: 7/16 in` for `name` works here in both units, and in the other sizes',
    ],
  ])
  // 7 letters of 1/2 in would do in inches; in millimetres they are 13 mm wide each, and 101 - 2 · 7 = 87 mm are there.
  const narrow = harbour('4 x 4 in').replace('widths: 5/8 in', 'widths: 1/2 in')
  expect(told(narrow).map(([, message]) => message)).toEqual([
    'At 4 × 4 in, printed in millimetres: 7 letters take 91 mm, but there are 87 mm between the margins',
  ])
  expect(told(harbour('4 x 4 in').replace('widths: 5/8 in', 'widths: 7/16 in'))).toEqual([])
})

test('what takes two lengths to cure is told together', () => {
  const text = harbour('2 x 3 in')
  expect(told(text)[0]?.[2]).toContain(
    '; `widths: 3/16 in` for `name` and `leg: 11/16 in` work here in both units',
  )
  const cured = text.replace('widths: 5/8 in', 'widths: 3/16 in').replace('leg: 3/4 in', 'leg: 11/16 in')
  expect(hasErrors(findingsOf(cured))).toBe(false)
})

test('a loose piece that is larger than the shut card is told, and its cure cures', () => {
  const text = harbour('6 x 3 in')
    .replace(/^envelope:.*\n/m, '')
    .replace(/## The envelope[\s\S]*/, '')
  expect(told(text)).toEqual([
    [
      '6:9 warning larger-than-card',
      'At 6 × 3 in: `lighthouse`, 1 × 3 1/2 in, is larger than the shut card of 6 × 3 in',
      "Make `lighthouse` at most 1 × 3 in there, or work its size out from the card's, such as `lighthouse: {size: closed.width / 4 x closed.height / 2}`",
    ],
  ])
  expect(findingsOf(text.replace('1 x 3 1/2 in', 'closed.width / 4 x closed.height / 2'))).toEqual([])
  expect(findingsOf(text.replace('1 x 3 1/2 in', '1 x 3 in'))).toEqual([])
})

test('a size given twice, or the own size given again, is told once or not at all', () => {
  expect(told(harbour('7 x 5 in'))).toEqual([])
  expect(told(harbour('4 x 4 in, 4 x 4 in'))).toHaveLength(1)
})

test('what is wrong in every size is left to the own print; what is wrong with the words is no matter of sizes', () => {
  const text = harbour('6 x 6 in').replace('{base.size}', '{base.siez}')
  expect(hasErrors(fillLesson(readLesson(text)).findings)).toBe(true)
  expect(told(text)).toEqual([])
  expect(told(harbour('6 x 6 in').replace(/:::caution[\s\S]*?:::/, ''))).toEqual([])
})

test('a square fold is told the nearest square, and that works', () => {
  const text = lessonText('tide-box.md').replace(/^sizes:.*$/m, 'sizes: [5 x 4 in]')
  const [[, message, cure] = []] = told(text)
  expect(message).toBe('At 5 × 4 in: an exploding box is square, and this one is 5 in × 4 in')
  const [, size = ''] = /; `([^`]+)` is the nearest size that works as it is$/.exec(cure ?? '') ?? []
  expect(size).toBe('4 x 4 in')
  expect(hasErrors(fillLesson(readLesson(text), { closed: readSize(size) }).findings)).toBe(false)
})
