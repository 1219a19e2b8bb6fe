import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { plainText } from '../../src/lesson/plain-text.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { isTooNested } from '../../src/lesson/syntax/nesting.ts'

const head = '---\ntitle: Shells\n---\n\n'

test('what is nested too deeply is told, and no word of it is lost', () => {
  const { tree, findings } = fillLesson(readLesson(`${head}${'> '.repeat(500)}the sea {wall}\n`))
  expect(findings.map((f) => f.rule)).toEqual(['no-card', 'too-deep'])
  expect(plainText(tree)).toContain('the sea {wall}')
})

test('call-outs of which none is ever closed are text', () => {
  const { tree, findings } = readLesson(`${head}${':::tip\n'.repeat(40)}the sea\n\n1. A step\n`)
  expect(findings.map((f) => f.rule)).toEqual(Array(40).fill('directive-shape'))
  expect(tree.children.map(({ type }) => type)).toEqual(['paragraph', 'list'])
})

test.each([
  [':::tip\na\n:::\n\n'.repeat(100), false],
  [`${':::tip\n'.repeat(30)}`, false],
  [`${':::tip\n'.repeat(31)}`, true],
  [Array.from({ length: 40 }, (_, i) => `${':'.repeat(50 - i)}tip\n`).join(''), true],
])('how deep call-outs are nested is counted', (text, expected) => {
  expect(isTooNested(text)).toBe(expected)
})
