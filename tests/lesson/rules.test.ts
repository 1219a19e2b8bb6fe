import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'

const front = '---\ntitle: Shells\n---\n\n'
const card = '```card\nfold: side\nclosed: 5 x 7 in\n```\n\n'
const told = (body: string) =>
  fillLesson(readLesson(front + body)).findings.map((f) => [
    f.rule,
    f.severity,
    (front + body).slice(f.place?.offset, f.place?.end),
  ])

describe('no-card', () => {
  test.each([
    ['1. Fold.', 'warning'],
    ['1. Fold {1 in}.', 'warning'],
    ['1. Fold {base.size}.', 'error'],
    ['1. Fold.\n\n   ::figure{show=flat}', 'error'],
    ['```supplies\neach:\n  tape: base.width * 2\n```\n\n1. Fold.', 'error'],
  ])('%j', (body, severity) => {
    expect(told(body)).toEqual([['no-card', severity, '']])
  })

  test('a card block that could not be read has been told already', () => {
    expect(told('> ```card\n> ```\n\n1. {base.size}').map(([rule]) => rule)).toEqual(['block-place'])
  })
})

test('no-steps', () => {
  expect(told(`${card}Fold it.\n\n- Fold.`)).toEqual([['no-steps', 'warning', '']])
  expect(told(`${card}Fold {it.\n\n- Fold.`).map(([rule]) => rule)).toEqual(['open-brace'])
})
