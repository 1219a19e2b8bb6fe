import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { longestLink } from '../../src/lesson/link.ts'
import { toOrdinary } from '../../src/lesson/ordinary.ts'
import { plainText } from '../../src/lesson/plain-text.ts'
import { readLesson } from '../../src/lesson/read.ts'

const head = '---\ntitle: Shells\n---\n\n'
const told = (text: string) =>
  readLesson(text).findings.map(({ place, rule, severity, suggestion }) => [
    rule,
    severity,
    text.slice(place?.offset, place?.end),
    suggestion,
  ])

test.each([
  ['::scan[Watch the *fold*]{link=https://example.org/fold}', 'https://example.org/fold'],
  ['::scan[Watch]{link="https://example.org/f?a=1&copy=2&b=ü#c"}', 'https://example.org/f?a=1&copy=2&b=ü#c'],
  ['::scan{link=http://example.org}', 'http://example.org'],
])('%s', (text, link) => {
  const lesson = readLesson(head + text)
  expect(lesson.findings).toEqual([])
  expect(lesson.tree.children).toMatchObject([{ type: 'scan', link }])
})

const wholeAddress = 'Write the whole address, with `https://`'
const example = 'Write `::scan[Watch the fold]{link="https://example.org/fold"}`, with the whole address'

test.each([
  ['::scan[Watch]', 'missing-attribute', '::scan[Watch]', example],
  ['::scan[Watch]{link}', 'missing-attribute', 'link', example],
  ['::scan[Watch]{link=example.org/fold}', 'value', 'example.org/fold', wholeAddress],
  ['::scan[Watch]{link="javascript:alert(1)"}', 'value', 'javascript:alert(1)', wholeAddress],
  ['::scan[Watch]{link="https://example.org/a b"}', 'value', 'https://example.org/a b', wholeAddress],
  [
    '::scan[Watch]{lnk=https://example.org/fold link=https://example.org}',
    'unknown-attribute',
    'lnk=https://example.org/fold',
    'Write `link`; put a value of several words in quotation marks',
  ],
])('%s: %s', (text, rule, at, suggestion) => {
  expect(told(head + text)).toEqual([[rule, 'error', at, suggestion]])
})

test.each([
  ['::scan[Watch]{link=https://example.org/f?a=1}', 'directive-shape', '::scan'],
  ['::scn[Watch]{link=https://example.org}', 'unknown-directive', '::scn'],
  ['See ::scan[Watch]{link=https://example.org}', 'directive-shape', '::scan'],
])('%s is told with how it is written', (text, rule, at) => {
  const [finding, ...others] = told(head + text)
  expect(finding?.slice(0, 3)).toEqual([rule, 'error', at])
  expect(finding?.[3]).toContain('::scan[Watch the fold]{link="https://example.org/fold"}')
  expect(others).toEqual([])
})

test('without a link that can be opened its caption stays', () => {
  const [left] = readLesson(`${head}::scan[Watch]{link=fold}`).tree.children
  expect(left).toMatchObject({ type: 'paragraph', children: [{ value: 'Watch' }] })
})

test('a link that no code holds is told, in the front matter too, and stays', () => {
  const link = (bytes: number) => `https://example.org/${'é'.repeat(10)}${'a'.repeat(bytes - 40)}`
  const scan = (bytes: number) => `${head}::scan[Watch]{link=${link(bytes)}}`
  const video = (bytes: number) => `---\ntitle: Shells\nvideo: ${link(bytes)}\n---\n`
  for (const lesson of [scan, video]) {
    expect(told(lesson(longestLink))).toEqual([])
    expect(told(lesson(longestLink + 1)).map((f) => f.slice(0, 3))).toEqual([
      ['long-link', 'warning', link(longestLink + 1)],
    ])
  }
  expect(readLesson(video(460)).frontMatter.video).toBe(link(460))
})

test('in ordinary Markdown it is its caption and its link, with measures filled in', () => {
  const card = '```card\nfold: side\nclosed: 5 x 7 in\n```\n\n'
  const { tree } = fillLesson(
    readLesson(`${head}${card}::scan[Watch {base.width}]{link=https://example.org/fold}`),
  )
  const [paragraph] = toOrdinary(tree).children
  expect(paragraph && plainText(paragraph)).toBe('Watch 10 in: https://example.org/fold')
  expect(paragraph).toMatchObject({
    children: [{}, {}, {}, { type: 'link', url: 'https://example.org/fold' }],
  })
})
