import type { Nodes } from 'mdast'
import { describe, expect, test } from 'vitest'
import { readLesson } from '../../src/lesson/read.ts'

const head = '---\ntitle: Shells\n---\n\n'

const told = (text: string) =>
  readLesson(head + text).findings.map(({ place, rule, suggestion }) => [
    rule,
    (head + text).slice(place?.offset, place?.end),
    suggestion,
  ])

const types = (node: Nodes): unknown =>
  'children' in node ? [node.type, ...node.children.map(types)] : node.type
const tree = (text: string) => readLesson(head + text).tree.children.map(types)

describe('figures', () => {
  test('a figure has what it shows, of what, and a caption with measures', () => {
    const text = '::figure[The *base*, {base.size}]{show=place of="sea wall"}'
    const [figure] = readLesson(head + text).tree.children
    expect(figure).toMatchObject({ type: 'figure', show: 'place', of: 'sea wall' })
    expect(types(figure as Nodes)).toEqual(['figure', 'text', ['emphasis', 'text'], 'text', 'measure'])
    const place = (figure as { data?: { ofPlace?: { offset?: number; end?: number } } }).data?.ofPlace
    expect((head + text).slice(place?.offset, place?.end)).toBe('sea wall')
  })

  test.each([
    ['::figure[a]{show=flt}', 'unknown-figure', 'flt', 'Write `flat`'],
    ["::figure[a]{ show = 'flt' }", 'unknown-figure', 'flt', 'Write `flat`'],
    [
      '::figure[a]{show=flat off=base}',
      'unknown-attribute',
      'off=base',
      'Write `of`; put a value of several words in quotation marks',
    ],
    [
      '::figure[a]{show=flat of}',
      'unknown-piece',
      'of',
      'Write the name of a piece, such as `of=base`, or leave `of` out to draw the whole card',
    ],
    ['::figur[a]{show=flat}', 'unknown-directive', '::figur', 'Write `::figure[caption]{show=flat}`'],
    [
      '::figure[a]{show=flat',
      'directive-shape',
      '::figure',
      'Write `::figure[caption]{show=flat}` on a line of its own',
    ],
    [
      'See ::figure[a]{show=flat}',
      'directive-shape',
      '::figure',
      'Write `::figure[caption]{show=flat}` on a line of its own',
    ],
    [
      ':::figure[a]{show=flat}\n:::',
      'directive-shape',
      ':::figure',
      'Write `::figure[caption]{show=flat}` on a line of its own',
    ],
  ])('%s', (text, ...finding) => {
    expect(told(text)).toEqual([finding])
  })

  test('a figure without `show` is told, and its caption stays', () => {
    expect(told('::figure[a]').map(([rule, at]) => [rule, at])).toEqual([
      ['missing-attribute', '::figure[a]'],
    ])
    expect(tree('::figure[a]')).toEqual([['paragraph', 'text']])
    expect(tree('::figure')).toEqual([])
  })
})

describe('call-outs', () => {
  test.each(['tip', 'caution', 'ahead', 'variation'])('%s', (kind) => {
    const [callout] = readLesson(`${head}:::${kind}[Title]\nText\n:::\n`).tree.children
    expect(callout).toMatchObject({ type: 'callout', kind })
    expect(types(callout as Nodes)).toEqual(['callout', ['paragraph', 'text'], ['paragraph', 'text']])
  })

  test('one in another takes one colon more outside', () => {
    expect(tree('::::tip\n:::caution\na\n:::\nb\n::::')).toEqual([
      ['callout', ['callout', ['paragraph', 'text']], ['paragraph', 'text']],
    ])
    expect(told(':::tip\n:::caution\na\n:::\nb\n:::').map(([rule, at]) => [rule, at])).toEqual([
      ['open-callout', ':::caution'],
    ])
  })

  test('one that is never closed ends behind its first block', () => {
    const text = ':::tip[Title]\nText\n\n1. A step\n\n```card\nfold: side\n```\n'
    const lesson = readLesson(head + text)
    expect(told(text)).toEqual([['open-callout', ':::tip[Title]', 'Add a line `:::` below its last line']])
    expect([lesson.steps.length, lesson.cards.length]).toEqual([1, 1])
    expect(lesson.tree.children.map(types)).toEqual([
      ['callout', ['paragraph', 'text'], ['paragraph', 'text']],
      ['list', ['listItem', ['paragraph', 'text']]],
    ])
  })

  test.each([
    [':::Tip\na\n:::', 'unknown-directive', ':::Tip', 'Write `:::tip`'],
    [
      ':::unknown\na\n:::',
      'unknown-directive',
      ':::unknown',
      'Write `:::tip` or `:::caution` or `:::ahead` or `:::variation`, or `\\:` for a colon that is meant as text',
    ],
    [
      ':::tip Leave a hair\n:::',
      'directive-shape',
      ':::tip',
      'Write `:::tip` on a line of its own, the text below it, and `:::` below that',
    ],
    [
      '::tip',
      'directive-shape',
      '::tip',
      'Write `:::tip` on a line of its own, the text below it, and `:::` below that',
    ],
    [':::tip{kind=x}\na\n:::', 'unknown-attribute', 'kind=x', 'Take it out'],
    [
      'a\n\n:::',
      'stray-colons',
      ':::',
      'Take them out; a call-out that holds another one takes one colon more, such as `::::tip`',
    ],
  ])('%j', (text, ...finding) => {
    expect(told(text)).toEqual([finding])
  })
})

describe('minutes', () => {
  test.each([
    ['1. a :minutes[five]', 'minutes', ':minutes[five]', 'Write `:minutes[5]`'],
    ['1. a :minutes[10 min]', 'minutes', ':minutes[10 min]', 'Write `:minutes[10]`'],
    ['1. a :minutes[0]', 'minutes', ':minutes[0]', 'Write `:minutes[5]`'],
    ['1. a :minuts[5]', 'unknown-directive', ':minuts', 'Write `:minutes[5]`'],
    ['1. a :minutes[5', 'directive-shape', ':minutes', 'Write `:minutes[5]`, with the number of minutes'],
    ['1. a ::minutes[5]', 'directive-shape', '::minutes', 'Write `:minutes[5]`, with the number of minutes'],
    ['a :minutes[5]', 'minutes-place', ':minutes[5]', 'Put them into an item of a numbered list'],
    ['1. a :drying[long]', 'drying', ':drying[long]', 'Write `:drying[20 min]`'],
    ['1. a :drying[0 min]', 'drying', ':drying[0 min]', 'Write `:drying[20 min]`'],
    ['1. a :dryng[5]', 'unknown-directive', ':dryng', 'Write `:drying[20 min]`'],
    ['1. a ::drying[5]', 'directive-shape', '::drying', 'Write `:drying[20 min]`, with how long it dries'],
    ['a :drying[20 min]', 'minutes-place', ':drying[20 min]', 'Put it into an item of a numbered list'],
  ])('%j', (text, ...finding) => {
    expect(told(text)).toEqual([finding])
  })
})
