import { expect, test } from 'vitest'
import { readLesson } from '../../src/lesson/read.ts'

const head = '---\ntitle: Shells\n---\n\n'
const cards = (text: string) => {
  const all = head + text
  const { cards, findings } = readLesson(all)
  const exact = cards.every(({ place, text: t }) => all.startsWith(t, place.offset))
  return {
    cards: cards.map((c) => [c.name, c.text, c.place.line, c.place.column]),
    exact,
    told: findings.map((f) => f.rule),
  }
}

test.each([
  ['```card\nfold: side\n```', ['card', 'fold: side', 6, 1], []],
  ['~~~~card  sea box \nfold: side\n\n~~~~~', ['sea box', 'fold: side\n', 6, 1], []],
  ['```card\n```', ['card', '', 6, 1], []],
  ['  ```card\n  fold: side\n  ```', ['card', '  fold: side', 6, 1], []],
  ['1. a\n\n   ```card\n   fold: side\n   ```', ['card', '   fold: side', 8, 1], ['block-place']],
  [':::tip\n```card\nfold: side\n```\n:::', ['card', 'fold: side', 7, 1], ['block-place']],
])('%j', (text, card, told) => {
  expect(cards(text)).toEqual({ cards: [card], exact: true, told })
})

test.each([
  ['> ```card\n> fold: side\n> ```', 'block-place'],
  ['```card\nfold: side', 'open-block'],
  ['```card', 'open-block'],
  ['```Card\nfold: side\n```', 'unknown-block'],
])('%j is no card, and is told', (text, rule) => {
  expect(cards(text)).toEqual({ cards: [], exact: true, told: [rule] })
})

test('two cards of one name, and two lists of supplies, are told', () => {
  const block = (info: string) => `\`\`\`${info}\na: b\n\`\`\`\n\n`
  expect(cards(block('card') + block('card')).told).toEqual(['second-card'])
  expect(cards(block('card') + block('card box')).told).toEqual([])
  expect(cards(block('supplies') + block('supplies')).told).toEqual(['second-supplies'])
})

test('other code stays in the lesson', () => {
  const { tree } = readLesson(`${head}\`\`\`js\nx\n\`\`\`\n`)
  expect(tree.children).toMatchObject([{ type: 'code', lang: 'js' }])
})
