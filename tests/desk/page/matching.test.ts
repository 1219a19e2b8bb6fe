import { expect, test } from 'vitest'
import { foldsOffered } from '../../../src/desk/engine/folds.ts'
import { matching } from '../../../src/desk/page/form/matching.ts'

const folds = foldsOffered()
const found = (words: string): string[] => matching(folds, words).map(({ name }) => name)

test('no words find every fold, and every fold is found by its own name', () => {
  expect(found('  ')).toHaveLength(folds.length)
  for (const { name } of folds) expect(found(name)).toContain(name)
})

test('a fold is found by what it does, in one or in many, whatever the case', () => {
  expect(found('Doors')).toEqual(expect.arrayContaining(['gate', 'double gate', 'joy']))
  expect(found('boxes')).toEqual(expect.arrayContaining(['box step', 'exploding box', 'match box']))
  expect(found('box')).toEqual(found('boxes'))
})

test('several words must all be meant', () => {
  expect(found('box slits')).toEqual(['box step'])
  expect(found('box zebra')).toEqual([])
})
