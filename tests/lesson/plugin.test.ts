import { readFileSync } from 'node:fs'
import rehypeStringify from 'rehype-stringify'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { VFile } from 'vfile'
import { expect, test } from 'vitest'
import { hasErrors } from '../../src/length/finding.ts'
import { toMessages } from '../../src/lesson/messages.ts'
import foldlore, { type FoldloreOptions } from '../../src/lesson/plugin.ts'

const fixture = (name: string): string =>
  readFileSync(new URL(`fixtures/${name}/lesson.md`, import.meta.url), 'utf8')

const process = (text: string, options: FoldloreOptions = {}): VFile =>
  unified()
    .use(remarkParse)
    .use(foldlore, options)
    .use(remarkRehype)
    .use(rehypeStringify)
    .processSync(new VFile({ path: 'lesson.md', value: text }))

test('a lesson becomes ordinary HTML in a pipeline of one’s own', () => {
  const file = process(fixture('worked-bridge'))
  expect(file.messages).toEqual([])
  expect(file.data.lesson?.frontMatter.title).toBe('Harbour bridge')
  const html = String(file)
  expect(html).toContain('Cut the base to 10 × 6 in and score it at 1, 2, 8 and 9 in. (5 min)')
  expect(html).toContain('<p>The base, 10 × 6 in</p>')
  expect(html).toContain('<div class="callout callout-tip">')
  expect(html).toContain('<ol start="3">')
  expect(html).not.toContain('fold: bridge')
})

test('the options are wishes, and draw figures', () => {
  const html = String(
    process(fixture('worked-bridge'), {
      closed: '7 x 5 in',
      units: 'mm',
      grid: '1 mm',
      figure: ({ show, of }, { unit }) => ({ type: 'html', value: `${show} of ${of} in ${unit}` }),
    }),
  )
  expect(html).toContain('Cut the base to')
  expect(html).not.toContain('10 × 6 in')
  expect(html).not.toContain('The base, ')
})

test('findings are messages with place, rule, what is there, and the cure', () => {
  const { messages } = process(fixture('six-mistakes'))
  expect(messages.map((m) => [m.line, m.column, m.source, m.ruleId, m.fatal])).toEqual([
    [3, 1, 'foldlore', 'unknown-key', true],
    [16, 21, 'foldlore', 'unknown-name', true],
    [16, 33, 'foldlore', 'minutes', true],
    [18, 36, 'foldlore', 'unknown-piece', true],
    [20, 4, 'foldlore', 'unknown-directive', true],
    [24, 25, 'foldlore', 'dimension', true],
    [24, 55, 'foldlore', 'open-brace', true],
  ])
  const [, name, , , , dimension] = messages
  expect([name?.actual, name?.expected, name?.note]).toEqual([
    'base.sise',
    ['base.size'],
    'Write `base.size`',
  ])
  expect([dimension?.expected, dimension?.note]).toEqual([
    undefined,
    'Give the plain number a unit, such as `in` or `mm`',
  ])
})

test('a warning is not fatal, and a hint is only a word', () => {
  const file = new VFile('one\ntwo')
  const findings = [
    { rule: 'a', severity: 'warning', message: 'A', place: { line: 1, column: 2, offset: 1, end: 3 } },
    { rule: 'b', severity: 'hint', message: 'B', place: { line: 1, column: 1, offset: 0, end: 7 } },
    { rule: 'c', severity: 'error', message: 'C' },
  ] as const
  expect(toMessages(findings, file).map((m) => [String(m), m.fatal])).toEqual([
    ['1:2-1:4: A', false],
    ['1:1: B', undefined],
    ['1:1: C', true],
  ])
  expect([file.messages.length, hasErrors(findings)]).toEqual([3, true])
})

test('what other plugins need stays: front matter, and their own directives', () => {
  const tree = unified().use(remarkParse).use(foldlore).parse('---\ntitle: a\n---\n\n:::note\n')
  expect(tree.children.map(({ type }) => type)).toEqual(['yaml', 'paragraph'])
  const after = unified()
    .use(remarkParse)
    .use(foldlore)
    .runSync(tree, new VFile('---\ntitle: a\n---\n\n:::note\n'))
  expect(after).toMatchObject({ children: [{ type: 'yaml' }, { type: 'paragraph' }] })
})
