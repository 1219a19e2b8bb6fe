import { describe, expect, test } from 'vitest'
import { inches, mm } from '../../src/length/length.ts'
import { readLesson } from '../../src/lesson/read.ts'

const told = (text: string) =>
  readLesson(text).findings.map(({ place, rule, suggestion }) => [
    rule,
    text.slice(place?.offset, place?.end),
    suggestion,
  ])

test('everything that can be said is read', () => {
  const { frontMatter, findings } = readLesson(`---
title: Harbour lights
summary: >
  A bridge card
  with a lighthouse.
level: advanced
units: mm
grid: 0.5 mm
sizes: [6 x 6 in, A6 landscape]
lang: de-CH
video: https://quay.example/lights
credits: [Odile Marram, Tam Quill]
---
`)
  expect(findings).toEqual([])
  expect(frontMatter).toMatchObject({
    title: 'Harbour lights',
    summary: 'A bridge card with a lighthouse.',
    level: 'advanced',
    units: 'mm',
    gridUnit: 'mm',
    lang: 'de-CH',
    video: 'https://quay.example/lights',
    credits: 'Odile Marram, Tam Quill',
  })
  expect(frontMatter.grid?.equals(mm(0.5))).toBe(true)
  expect(frontMatter.sizes.map(({ text }) => text)).toEqual(['6 x 6 in', 'A6 landscape'])
  expect(frontMatter.sizes[0]?.size.width.equals(inches(6))).toBe(true)
  expect(frontMatter.sizes[1]?.size.height.equals(mm(105))).toBe(true)
})

test('what is not said has its usual value', () => {
  const { frontMatter, findings } = readLesson('---\ntitle: Shells\n---\n')
  expect(findings).toEqual([])
  expect(frontMatter).toEqual({
    title: 'Shells',
    level: 'beginner',
    units: 'in',
    lang: 'en',
    sizes: [],
    for: 'anyone',
    allow: [],
  })
})

describe('each wrong value is told at its place', () => {
  test.each([
    ['levle: beginner', 'unknown-key', 'levle', 'Write `level`'],
    ['level: expert', 'value', 'expert', 'Choose one of `beginner`, `improver` or `advanced`'],
    ['units: inch', 'value', 'inch', 'Write `in`'],
    ['grid: 0 mm', 'value', '0 mm', 'Write `grid: 1/16 in` or `grid: 1 mm`'],
    ['grid: 1', 'no-unit', '1', 'Write `1 in` or `1 mm`'],
    ['sizes: [6 x 6 in, 5 x in]', 'no-unit', '5', 'Write `5 in` or `5 mm`'],
    ['sizes: [{a: b}]', 'value', '{a: b}', 'Write a size such as `7 x 5 in`'],
    ['lang: english please', 'value', 'english please', 'Write `en` or `de-CH`'],
    ['video: quay.example', 'value', 'quay.example', 'Write the whole address, with `https://`'],
    ['summary: [a, {b: c}]', 'value', '{b: c}', 'Write one sentence'],
  ])('%s', (line, ...finding) => {
    expect(told(`---\ntitle: Shells\n${line}\n---\n`)).toEqual([finding])
  })
})

test.each([
  ['', 'missing-key'],
  ['A lesson.\n', 'missing-key'],
  ['---\nlevel: beginner\n---\n', 'missing-key'],
  ['---\ntitle: Shells\n\nA lesson.\n', 'open-front-matter'],
  ['---\n---\n', 'missing-key'],
])('a lesson without a title: %j', (text, rule) => {
  expect(told(text).map(([first]) => first)).toEqual([rule])
})
