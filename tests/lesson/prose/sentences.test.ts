import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { sentencesOf } from '../../../src/lesson/prose/sentences.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const block = '```card\nfold: side\nclosed: 5 x 7 in\n```\n\n'

function read(body: string) {
  const text = `---\ntitle: Shells\n---\n\n${block}${body}`
  const lesson = readLesson(text)
  return { text, sentences: sentencesOf(fillLesson(lesson).tree, lesson.source) }
}

const wordsOf = (body: string) => read(body).sentences.map(({ words }) => words)

describe('where sentences end', () => {
  test.each([
    ['Cut it. Fold it.', ['Cut it.', 'Fold it.']],
    ['Cut it to 5 in. Fold it.', ['Cut it to 5 in.', 'Fold it.']],
    ['Is it flat? Then press!', ['Is it flat?', 'Then press!']],
    ['Leave 0.5 mm, e.g. At the fold.', ['Leave 0.5 mm, e.g. At the fold.']],
    ['One (or two.) Three', ['One (or two.)', 'Three']],
    ['*Cut* it.\nFold **it**.', ['Cut it.', 'Fold it.']],
    ['Cut it to {base.size}. Fold it.', ['Cut it to 10 × 7 in.', 'Fold it.']],
    ['{base.width}. {base.height}.', ['10 in.', '7 in.']],
    ['See `a. B` and ![x. Y](z).', ['See   and  .']],
  ])('%j', (body, words) => expect(wordsOf(body)).toEqual(words))
})

test('where they stand: in a step, a call-out, a heading, a caption, a table', () => {
  const { sentences } = read(
    '# Shells\n\nA start.\n\n1. Cut.\n\n   ::figure[The base]{show=flat}\n\n   :::tip\n   Slowly.\n   :::\n\n2. Fold.\n\n| a | b |\n|-|-|\n| c | d |\n',
  )
  expect(sentences.map(({ words, step, callout, kind }) => [words, step, callout, kind])).toEqual([
    ['Shells', undefined, undefined, 'heading'],
    ['A start.', undefined, undefined, 'text'],
    ['Cut.', 1, undefined, 'text'],
    ['The base', 1, undefined, 'caption'],
    ['Slowly.', 1, 'tip', 'text'],
    ['Fold.', 2, undefined, 'text'],
    ['a', undefined, undefined, 'cell'],
    ['b', undefined, undefined, 'cell'],
    ['c', undefined, undefined, 'cell'],
    ['d', undefined, undefined, 'cell'],
  ])
})

test('measures stand in the words, with the names they are worked out from', () => {
  const { sentences } = read('Cut {base.width + 1 in} off. Keep {base.size}.')
  const [first, second] = sentences
  const [cut, keep] = [first?.measures[0], second?.measures[0]]
  expect([first?.words.slice(cut?.start, cut?.end), cut?.paths]).toEqual(['11 in', [['base', 'width']]])
  expect([second?.words.slice(keep?.start, keep?.end), keep?.paths]).toEqual([
    '10 × 7 in',
    [['base', 'size']],
  ])
})

describe('the place of words in the file', () => {
  test.each([
    ['Cut the sea wall now.', 'sea wall', 'sea wall'],
    ['Cut the *sea* wall now.', 'sea wall', 'sea* wall'],
    ['> Cut 5\n> in off.', '5 in', '5\n> in'],
    ['1. Cut 5\n   in off.', '5 in', '5\n   in'],
    ['Cut 5\\" off.', '5"', '5\\"'],
    ['Cut 5&quot; off.', '5"', '5&quot;'],
    ['First.\u00a0Then {base.width} off.', '10 in off', '{base.width} off'],
  ])('%j', (body, words, written) => {
    const { text, sentences } = read(body)
    const sentence = sentences.find((one) => one.words.includes(words))
    const at = sentence?.words.indexOf(words) ?? -1
    const { offset, end } = sentence?.place(at, at + words.length) ?? {}
    expect(text.slice(offset, end)).toBe(written)
  })
})
