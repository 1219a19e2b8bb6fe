import { describe, expect, test } from 'vitest'
import type { Card } from '../../../src/card/card.ts'
import { mentionFinder } from '../../../src/lesson/prose/mentions.ts'
import type { Named } from '../../../src/lesson/prose/named.ts'

const card = { name: 'card' } as Card
const other = { name: 'box' } as Card
const piece = (name: string, of = card): Named => ({ name, kind: 'piece', card: of })

const find = mentionFinder([
  piece('base'),
  piece('sea wall'),
  piece('side strip'),
  piece('cover strip'),
  piece('strip of sky'),
  piece('knife'),
  piece('base', other),
  piece('party'),
])
const found = (words: string) =>
  find({ words, measures: [] }).map(({ named, start, end, by }) => [
    words.slice(start, end),
    named.card === other ? `box.${named.name}` : named.name,
    by,
  ])

describe('what a sentence speaks of', () => {
  test.each([
    ['Cut the sea wall.', [['sea wall', 'sea wall', 'name']]],
    ['Cut the Sea-Walls.', [['Sea-Walls', 'sea wall', 'name']]],
    ['Press the wall.', [['wall', 'sea wall', 'last word']]],
    ['Press the strip.', []],
    ['Press the sky.', [['sky', 'strip of sky', 'last word']]],
    [
      'Two knives, two parties',
      [
        ['knives', 'knife', 'name'],
        ['parties', 'party', 'name'],
      ],
    ],
    ['The basement, a seawall', []],
    [
      'The base',
      [
        ['base', 'base', 'name'],
        ['base', 'box.base', 'name'],
      ],
    ],
  ])('%j', (words, mentions) => expect(found(words)).toEqual(mentions))
})

test('a measure speaks of what it is of, and its text of nothing', () => {
  const node = { type: 'measure' as const, value: 'box.base.size' }
  const measures = [{ node, start: 4, end: 12, paths: [['box', 'base', 'size']] }]
  expect(find({ words: 'Cut sea wall', measures })).toEqual([
    { named: piece('base', other), start: 4, end: 12, by: 'measure' },
  ])
})

test('a name of many dashes is looked for at once', () => {
  const name = `wall${' -'.repeat(500)} end`
  const start = process.cpuUsage().user
  const words = `Cut the ${name}, and not the wall${' -'.repeat(500)} beginning.`
  const mentions = mentionFinder([piece(name)])({ words, measures: [] })
  expect(mentions.map(({ start, end }) => words.slice(start, end))).toEqual([name])
  expect(process.cpuUsage().user - start).toBeLessThan(2e6)
})

test('a name that is empty is nowhere, and does not keep anybody waiting', () => {
  expect(
    mentionFinder([piece(''), piece('base')])({
      words: 'Cut it. Fold the base; then stick it.',
      measures: [],
    }),
  ).toEqual([{ named: piece('base'), start: 17, end: 21, by: 'name' }])
})
