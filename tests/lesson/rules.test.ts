import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { hazards } from '../../src/lesson/rules/hazards.ts'

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

describe('no-caution', () => {
  test.each([
    'craft knife',
    'Craft Knives',
    'scalpel',
    'knife',
    'hot glue gun',
    'heat tool',
    'spray adhesive',
    'contact glue',
    'superglue',
    'rotary cutter',
    'soldering iron',
  ])('%s', (tool) => {
    expect(told(`${card}1. Take the ${tool} now.`)).toEqual([['no-caution', 'warning', tool]])
    expect(told(`${card}\`\`\`supplies\neach:\n  ${tool}: 1\n\`\`\`\n\n1. Fold.`)).toEqual([
      ['no-caution', 'warning', tool],
    ])
    expect(told(`${card}1. Take the ${tool}.\n\n   :::caution\n   Mind it.\n   :::`)).toEqual([])
  })

  test.each(['scissors', 'glue stick', 'bone folder', 'environ', 'irons out', 'heat', 'spray water'])(
    '%s needs none',
    (tool) => {
      expect(told(`${card}1. Take the ${tool}.`)).toEqual([])
    },
  )

  test('a tool of the prose between the steps, or in a tip, is not used in a step', () => {
    expect(told(`${card}A knife is not needed.\n\n1. Fold.`)).toEqual([])
  })

  test('each hazard is told once', () => {
    expect(told(`${card}1. Take the knife.\n2. Take the knife, and the scalpel.`)).toHaveLength(1)
    expect(hazards.every(({ caution }) => caution.length > 0)).toBe(true)
  })
})
