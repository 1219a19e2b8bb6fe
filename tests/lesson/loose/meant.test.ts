import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { plainText } from '../../../src/lesson/plain-text.ts'
import { sentencesOf } from '../../../src/lesson/prose/sentences.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const card = '```card\nfold: side\nclosed: 5 x 7 in\n```\n\n'
const read = (body: string) => readLesson(`---\ntitle: Shells\n---\n\n${card}${body}`)

describe('what is meant', () => {
  test('its words are printed as they are, wherever they stand', () => {
    const lesson = read('# Drill :meant[2 mm]\n\n1. Drill *:meant[2 **mm**]* deep, {base.width} wide.\n')
    const { tree, findings } = fillLesson(lesson)
    expect(plainText(tree)).toBe('Drill 2 mm Drill 2 mm deep, 10 in wide.')
    expect(findings).toEqual([])
  })

  test('a sentence knows where they are', () => {
    const lesson = read('Soak it. Drill :meant[2 mm], not 3.')
    const [, drill] = sentencesOf(fillLesson(lesson).tree, lesson.source)
    expect(drill?.meant.map(({ start, end }) => drill.words.slice(start, end))).toEqual(['2 mm'])
  })

  test.each([
    [':meant[]', 'empty-meant'],
    [':meant[2 mm]{of=base}', 'unknown-attribute'],
    [':ment[2 mm]', 'unknown-directive'],
    ['::meant[2 mm]', 'directive-shape'],
  ])('%s is told', (body, rule) =>
    expect(read(`1. Drill ${body}.\n`).findings.map((f) => f.rule)).toEqual([rule]),
  )

  test.each(['The :meant end', 'a :meant\n[2 mm]', 'meant[2 mm]'])('%j stays text', (body) => {
    expect(plainText(read(body).tree)).toBe(body)
  })
})

describe('a constant in braces', () => {
  const printed = (measure: string, units: 'in' | 'mm') => {
    const filled = fillLesson(read(`1. Fold ${measure}.\n`), { units })
    return [plainText(filled.tree), filled.findings.filter(({ rule }) => rule === 'off-grid').length]
  }
  test.each([
    ['{2 mm}', 'in', 'Fold 1/16 in.'],
    ['{2 mm}', 'mm', 'Fold 2 mm.'],
    ['{2 mm as mm}', 'in', 'Fold 2 mm.'],
    ['{1/4 in}', 'mm', 'Fold 6 mm.'],
    ['{1/4 in as in}', 'mm', 'Fold 1/4 in.'],
  ] as const)('%s in %s is on the ruler without a word', (measure, units, words) =>
    expect(printed(measure, units)).toEqual([words, 0]),
  )
})
