import fc from 'fast-check'
import type { Nodes } from 'mdast'
import { expect, test } from 'vitest'
import { readLesson } from '../../src/lesson/read.ts'
import { htmlOf, plainHtml } from './html.ts'

const words = [
  'sea',
  'wall',
  '7:30',
  '3:2',
  'Note:this',
  ':foo',
  ':foo[*bar*]',
  ':foo[bar]',
  '::foo',
  ':::foo',
]
const marks = [
  ':',
  '::',
  ':::',
  '*',
  '_',
  '`',
  '[',
  ']',
  '(/quay)',
  '<b>',
  '\\',
  '\\:',
  '> ',
  '- ',
  '1. ',
  '# ',
]
const ends = [' ', '\n', '\n\n', '\n  ', '\n    ']

const lookalike = fc
  .array(fc.constantFrom(...words, ...marks, ...ends), { maxLength: 30 })
  .map((parts) => parts.join(''))

test('what only looks like a directive is what CommonMark says', () => {
  fc.assert(
    fc.property(lookalike, (text) => {
      expect(htmlOf(readLesson(text).tree)).toBe(plainHtml(text))
    }),
    { numRuns: 500 },
  )
})

const inText = [
  'sea',
  'wall',
  ':minuts[5]',
  'a:minutes',
  ':Minutes[5]',
  ':::tipp',
  '::figur[x]',
  '{',
  '}',
  '{sea.wall}',
]

/** The text as written: measures with their braces again. */
const writtenText = (node: Nodes): string => {
  if (node.type === 'measure') return `{${node.value}}`
  if ('value' in node) return node.value
  return 'children' in node ? node.children.map(writtenText).join('') : ''
}

test('no character of a paragraph is lost', () => {
  const text = fc
    .array(fc.tuple(fc.constantFrom(...inText), fc.constantFrom(' ', '', '\n')), {
      minLength: 1,
      maxLength: 20,
    })
    .map((parts) => `quay ${parts.flat().join('')}.`)
  fc.assert(
    fc.property(text, (paragraph) => {
      expect(writtenText(readLesson(paragraph).tree)).toBe(paragraph)
    }),
    { numRuns: 500 },
  )
})

test.each([
  ['At 7:30, 3:2', '<p>At 7:30, 3:2</p>'],
  ['Note:this', '<p>Note:this</p>'],
  [':foo[*bar*]', '<p>:foo[<em>bar</em>]</p>'],
  [':::unknown\n*a*\n:::', '<p>:::unknown\n<em>a</em>\n:::</p>'],
  ['::unknown[*a*]', '<p>::unknown[<em>a</em>]</p>'],
  [':minutes[5', '<p>:minutes[5</p>'],
  [':minutes', '<p>:minutes</p>'],
  [':minutesé[5]', '<p>:minutesé[5]</p>'],
  ['::tip', '<p>::tip</p>'],
  ['::: tip\na\n:::', '<p>::: tip\na\n:::</p>'],
  ['a {b', '<p>a {b</p>'],
  ['a \\{b\\}', '<p>a {b}</p>'],
  ['{}', '<p>{}</p>'],
])('%j stays text', (text, html) => {
  expect(htmlOf(readLesson(text).tree)).toBe(html)
})
