import { expect, test } from 'vitest'
import { kitLabels } from '../../../src/workshop/class/kit-labels.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'
import { harbour } from '../harbour.ts'

function labelsOf(text: string) {
  const { file, findings } = readClass(text)
  expect(findings).toEqual([])
  return kitLabels(
    file,
    file.lessons.map((one) => taughtLesson(one, harbour(), file).taught),
  )
}

test('every kit has a label, the spare ones last', () => {
  const names = labelsOf('people: 3\nspare: 2\nlesson: a.md').map(({ name }) => name)
  expect(names).toEqual(['kit 1', 'kit 2', 'kit 3', 'spare kit 1', 'spare kit 2'])
})

test('it says what is packed', () => {
  const [first] = labelsOf('people: 1\nlesson: a.md')
  expect(first?.contents.map((text) => text.replaceAll('\u00a0', ' '))).toEqual([
    '1 base',
    '2 side strip',
    '1 backdrop',
    '1 sea wall',
    '1 envelope',
    '7 letters HARBOUR',
    '5 pearl dots',
    '34 in double-sided tape',
    'a little glue',
  ])
})

test('people have their names, and what they take', () => {
  const labels = labelsOf(`people: [Ada, {name: Bo, takes: green card, note: no latex}, Cy]
spare: 1
lesson: a.md
choices: {dark blue card: {dark blue card: 2, green card: 1}}
`)
  expect(labels.map(({ name, chosen }) => `${name}: ${chosen}`)).toEqual([
    'Ada: dark blue card',
    'Bo: green card',
    'Cy: dark blue card',
    'spare kit 1: dark blue card',
  ])
})

test('nobody gets what is not there: a wish too many is filled with what is left', () => {
  const labels = labelsOf(`people: [{name: Ada, takes: green card}, {name: Bo, takes: green card}]
lesson: a.md
choices: {dark blue card: {dark blue card: 1, green card: 1}}
`)
  expect(labels.map(({ chosen }) => chosen)).toEqual([['green card'], ['dark blue card']])
})
