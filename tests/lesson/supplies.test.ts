import { expect, test } from 'vitest'
import { areaNumber } from '../../src/length/area.ts'
import { numberIn } from '../../src/length/length.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import type { Amount } from '../../src/lesson/lesson.ts'
import { readLesson } from '../../src/lesson/read.ts'

const lesson = (supplies: string) => `---
title: Shells
---

\`\`\`card
fold: side
closed: 5 x 7 in
\`\`\`

\`\`\`supplies
${supplies}
\`\`\`

1. Cut and tape it.
`

function read(supplies: string) {
  const text = lesson(supplies)
  const filled = fillLesson(readLesson(text))
  return {
    supplies: filled.supplies,
    told: filled.findings.map((f) => [f.rule, text.slice(f.place?.offset, f.place?.end), f.suggestion]),
  }
}

function plain(amount: Amount | undefined) {
  if (amount?.kind === 'length') return ['length', numberIn(amount.length, 'in')]
  if (amount?.kind === 'area') return ['area', areaNumber(amount.area, 'in')]
  if (amount?.kind === 'dose') return ['dose', amount.dose.unit, amount.dose.amount.valueOf()]
  return amount && Object.values(amount)
}

test.each([
  ['5', ['count', 5]],
  ['1 per 3', ['per', 1, 3]],
  ['a little', ['text', 'a little']],
  ['2 sheets', ['text', '2 sheets']],
  ['one, or two', ['text', 'one, or two']],
  ['20 in', ['length', 20]],
  ['base.height * 4', ['length', 28]],
  ['base.width + 1 in', ['length', 11]],
  ['base.count * 3', ['count', 3]],
  ['base.size', ['text', '10 × 7 in']],
  ['3 drops', ['count', 3, 'drops']],
  ['1 per table', ['per table', 1]],
  ['base.width * base.height', ['area', 70]],
  ['base.width * base.height / 2 + 1 in * 2 in', ['area', 37]],
  ['6 sq in', ['area', 6]],
  ['5 g', ['dose', 'g', 5]],
  ['2.5 ml', ['dose', 'ml', 2.5]],
  ['0.5 l', ['dose', 'ml', 500]],
])('an amount of %s', (amount, expected) => {
  const { supplies, told } = read(`each:\n  tape: ${amount}`)
  expect(told).toEqual([])
  expect(plain(supplies.each[0]?.amount)).toEqual(expected)
})

test.each([
  ['each:\n  tape: base.heigth * 4', 'unknown-name', 'base.heigth', 'Write `base.height`'],
  ['each:\n  tape: 1 per 0', 'value', '1 per 0', 'Write for example `1 per 2`'],
  [
    'each:\n  tape: 2 in - 3 in',
    'value',
    '2 in - 3 in',
    'Write how many, or a length or an area larger than nothing',
  ],
  [
    'each:\n  tape: base.scores',
    'value',
    'base.scores',
    'Write how many, or a length or an area larger than nothing',
  ],
  [
    'each:\n  tape: base.width * base.height + 1 in',
    'dimension',
    'base.width * base.height + 1 in',
    'Add areas to areas, and multiply or divide them by plain numbers',
  ],
  ['each:\n  tape: [1]', 'value', '[1]', 'Write how many, how long, `1 per 2`, or for example `a little`'],
  ['each:\n  tape:', 'value', '', 'Write how many, how long, `1 per 2`, or for example `a little`'],
  ['each: tape', 'value', 'tape', 'Write one item and its amount a line, such as `scissors: 1`'],
  ['evry:\n  tape: 1', 'unknown-key', 'evry', 'Choose one of `each`, `shared` or `tutor`'],
])('%j', (supplies, ...finding) => {
  expect(read(supplies).told).toEqual([finding])
})

test('each supply has its group and its place', () => {
  const { supplies } = read('each: {a: 1}\nshared: {b: 1}\ntutor: {c: 1}')
  expect([supplies.each, supplies.shared, supplies.tutor].map(([s]) => [s?.item, s?.place.line])).toEqual([
    ['a', 11],
    ['b', 12],
    ['c', 13],
  ])
})
