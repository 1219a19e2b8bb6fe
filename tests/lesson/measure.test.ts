import { describe, expect, test } from 'vitest'
import { inches, mm } from '../../src/length/length.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import type { Wishes } from '../../src/lesson/lesson.ts'
import { plainText } from '../../src/lesson/plain-text.ts'
import { readLesson } from '../../src/lesson/read.ts'

// A side fold of 5 x 7 in: its base is twice as wide, 10 x 7 in.
const lesson = (body: string, front = '') =>
  `---\ntitle: Shells\n${front}---\n\n\`\`\`card\nfold: side\nclosed: 5 x 7 in\n\`\`\`\n\n1. ${body}\n`

function filled(body: string, wishes: Wishes = {}, front = '') {
  const text = lesson(body, front)
  const { tree, findings } = fillLesson(readLesson(text), wishes)
  return {
    text: plainText(tree),
    // One step that says a measure is no whole lesson; that is not what is asked here.
    told: findings
      .filter(({ rule }) => rule !== 'score-unsaid')
      .map((f) => [f.rule, text.slice(f.place?.offset, f.place?.end), f.suggestion]),
  }
}

test.each([
  ['{base.width}', '10 in'],
  ['{base.size}', '10 × 7 in'],
  ['{base.scores}', '5 in'],
  ['{base.count}', '1'],
  ['{base.count * 3}', '3'],
  ['{base.width / base.height * 7}', '10'],
  ['{base.width + 1/4 in}', '10 1/4 in'],
  ['{base.width as mm}', '254 mm'],
  ['{base.height as mm}', '178 mm'],
  ['{base.stock}', 'card'],
  ['{ base.width }', '10 in'],
])('%s', (measure, text) => {
  expect(filled(measure)).toEqual({ text, told: [] })
})

describe('another unit is another ruler', () => {
  test('the lesson is filled in in the unit that is wished', () => {
    expect(filled('{base.size}', { units: 'mm' })).toEqual({ text: '254 × 177 mm', told: [] })
    expect(filled('{base.height as in}', { units: 'mm' })).toEqual({ text: '6 15/16 in', told: [] })
  })

  test('a grid counts in its own unit', () => {
    const grid = 'grid: 1/4 in\n'
    expect(filled('{base.width / 16}', {}, grid).told).toEqual([
      ['off-grid', 'base.width / 16', 'The nearest mark is 1/2 in'],
    ])
    expect(filled('{base.width / 16}').told).toEqual([])
    expect(filled('{base.width / 2}', { units: 'mm' }, grid)).toEqual({ text: '127 mm', told: [] })
    expect(filled('{base.width / 16}', { grid: inches(1, 8) }, grid)).toEqual({ text: '5/8 in', told: [] })
  })
})

test('a measure between two marks of the ruler is told, and printed as the nearest', () => {
  expect(filled('{base.width / 3}')).toEqual({
    text: '3 5/16 in',
    told: [['off-grid', 'base.width / 3', 'The nearest mark is 3 5/16 in']],
  })
  expect(filled('{1/3 in x 2 in}').text).toBe('5/16 × 2 in')
  expect(filled('{1/50 in}').text).toBe('0.02 in')
})

test('nobody cuts a thickness', () => {
  expect(filled('{base.thickness as mm}').told).toEqual([])
  expect(filled('{base.thickness as mm}').text).toMatch(/^0\.\d+ mm$/)
})

test.each([
  ['{base.width + 3}', 'dimension', 'base.width + 3'],
  ['{base.width as cm}', 'unit', 'cm'],
  ['{base}', 'unknown-name', 'base'],
  ['{base.widht}', 'unknown-name', 'base.widht'],
  ['{2 * (base.width}', 'expression', ''],
])('%s has no text, and is told', (measure, rule, at) => {
  const { text, told } = filled(measure)
  expect(text).toBe(measure)
  expect(told.map((finding) => finding.slice(0, 2))).toEqual([[rule, at]])
})

test('filling leaves the lesson that it was given alone', () => {
  const read = readLesson(lesson('{base.width}'))
  const before = structuredClone(read.tree)
  const inInches = fillLesson(read)
  const inMm = fillLesson(read, { units: 'mm', grid: mm(1) })
  expect(read.tree).toEqual(before)
  expect([plainText(inInches.tree), plainText(inMm.tree)]).toEqual(['10 in', '254 mm'])
})

test('a stage has its measures filled in', () => {
  const text = lesson('a').replace('1. a', '## Cut {base.size}\n\n1. a')
  expect(fillLesson(readLesson(text)).steps[0]?.stage).toBe('Cut 10 × 7 in')
})
