import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'

const lesson = (allow: string, steps = '1. Cut the base to {base.size}. Fold it.') =>
  `---\ntitle: Shells\n${allow}---\n\n\`\`\`card\nfold: side\nclosed: 5 x 7 in\n\`\`\`\n\n${steps}\n`
/** What such short lessons lack besides is not what this is about. */
const about = ['score-unsaid', 'unknown-piece', 'unknown-rule', 'no-reason', 'unused-allow', 'value']
const told = (text: string) =>
  fillLesson(readLesson(text))
    .findings.filter(({ rule }) => about.includes(rule))
    .map(({ rule, severity, place, suggestion }) => [
      rule,
      severity,
      text.slice(place?.offset, place?.end),
      suggestion,
    ])
const rulesOf = (text: string) => told(text).map(([rule]) => rule)

test('a rule that is allowed with a reason is not told', () => {
  expect(rulesOf(lesson(''))).toEqual(['score-unsaid'])
  expect(rulesOf(lesson('allow: {score-unsaid: The fold is shown by hand.}\n'))).toEqual([])
})

test('a rule that does not exist is an error, with the nearest one', () => {
  expect(told(lesson('allow: {score-unsaids: It is shown by hand.}\n'))[0]).toEqual([
    'unknown-rule',
    'error',
    'score-unsaids',
    'Write `score-unsaid`',
  ])
})

test('without a reason it is an error, and until that is mended the steps are not looked at', () => {
  expect(rulesOf(lesson('allow: {score-unsaid: }\n'))).toEqual(['no-reason'])
  expect(rulesOf(lesson('allow: [score-unsaid]\n'))).toEqual(['value'])
})

test('a rule that nothing breaks any more is told as a hint', () => {
  const said = '1. Cut the base to {base.size}. Score it at {base.scores} and fold it.'
  expect(told(lesson('allow: {score-unsaid: It is shown by hand.}\n', said))).toEqual([
    ['unused-allow', 'hint', 'score-unsaid', 'Take the line out'],
  ])
})

test('an error is told although its rule is allowed', () => {
  const figure = '1. Cut the base to {base.size}. Fold it in half.\n\n   ::figure{show=flat of=bse}'
  expect(rulesOf(lesson('allow: {unknown-piece: It is meant so.}\n', figure))).toEqual([
    'unused-allow',
    'unknown-piece',
  ])
})
