import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { stepNames } from '../../src/lesson/step-names.ts'

const card =
  '```card\nfold: side\nclosed: 5 x 7 in\nlayers:\n  mat: {on: [front, back], border: 1/8 in}\n```\n'

function names(...steps: string[]): string[] {
  const list = steps.map((step, i) => `${i + 1}. ${step}`).join('\n')
  const { tree } = fillLesson(
    readLesson(`---\ntitle: A\nlevel: beginner\nunits: in\n---\n\n${card}\n${list}\n`),
  )
  return [...stepNames(tree).values()]
}

test('a step is named by its first clause, without its measures and the word before them', () => {
  expect(
    names(
      'Cut the base to {base.size}. Lay it down.',
      'Score the fold at {base.scores}, from the left.',
      'Turn it over, so that the left edge stays.',
      'Fold: the left half over the right. :minutes[5]',
      'Stick it down.',
    ),
  ).toEqual(['Cut the base', 'Score the fold', 'Turn it over', 'Fold', 'Stick it down'])
})

test('how many there are is part of the name', () => {
  expect(names('Cut {mat.count} mats to {mat.size}.')).toEqual(['Cut 2 mats'])
})

test('a long sentence ends between two clauses, and a step that begins with a number is a number', () => {
  expect(
    names(
      'Press the ends of the long paper strip down on the table and hold them there until they stay.',
      '{base.size} is the base.',
    ),
  ).toEqual(['Press the ends of the long paper strip down on the table', 'Step 2'])
})
