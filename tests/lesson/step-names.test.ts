import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { stepNames } from '../../src/lesson/step-names.ts'

const card =
  '```card\nfold: side\nclosed: 5 x 7 in\nlayers:\n  mat: {on: [front, back], border: 1/8 in}\n```\n'

const names = (...steps: string[]): string[] => namesIn('en', ...steps)

function namesIn(lang: string, ...steps: string[]): string[] {
  const list = steps.map((step, i) => `${i + 1}. ${step}`).join('\n')
  const { tree, wording } = fillLesson(
    readLesson(`---\ntitle: A\nlevel: beginner\nunits: in\nlang: ${lang}\n---\n\n${card}\n${list}\n`),
  )
  return [...stepNames(tree, wording).values()]
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

test('a name does not end on words that lead to what it leaves out, and a measure that is no number stays in it', () => {
  expect(
    names(
      'Turn the base over so that the {base.size} side is down.',
      'Cut the piece along the {base.width} and fold it.',
      'Turn it over at the {base.edge}. Score it.',
    ),
  ).toEqual(['Turn the base over', 'Cut the piece', 'Turn it over at the left edge'])
  expect(namesIn('fr', 'Poser la règle le long du bord, à la {base.width} du coin.')).toEqual([
    'Poser la règle le long du bord',
  ])
  expect(namesIn('es', 'Dar la vuelta para que el {base.size} quede abajo.')).toEqual(['Dar la vuelta'])
})

test('a long sentence ends between two clauses, and a step that begins with a number is a number', () => {
  expect(
    names(
      'Press the ends of the long paper strip down on the table and hold them there until they stay.',
      '{base.size} is the base.',
    ),
  ).toEqual(['Press the ends of the long paper strip down on the table', 'Step 2'])
})

test('where the verb comes last, the measures are taken out of the middle', () => {
  expect(
    namesIn(
      'de',
      'Die Grundkarte auf {base.size} schneiden und bei {base.scores} rillen.',
      'Die Einlage, {mat.size}, auf die Grundkarte kleben. Andrücken.',
      'Die Einlage ({mat.width} auf {mat.height}) umdrehen: so liegt sie richtig.',
      '{base.size}.',
      'Ein Rechteck zuschneiden, {base.size}. Es hinlegen.',
    ),
  ).toEqual([
    'Die Grundkarte schneiden und rillen',
    'Die Einlage auf die Grundkarte kleben',
    'Die Einlage umdrehen',
    'Schritt 4',
    'Ein Rechteck zuschneiden',
  ])
})

test('where the verb comes first, a name ends before the word that leads to a measure', () => {
  expect(namesIn('fr', 'Couper la base à {base.size}.', 'Rainer le pli à {base.scores}.')).toEqual([
    'Couper la base',
    'Rainer le pli',
  ])
  expect(namesIn('es', 'Cortar la base a {base.size}.', 'Hender a {base.scores} de la izquierda.')).toEqual([
    'Cortar la base',
    'Hender',
  ])
})
