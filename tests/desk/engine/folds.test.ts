import { expect, test } from 'vitest'
import { foldPicture, foldsOffered } from '../../../src/desk/engine/folds.ts'
import { starterIn } from '../../../src/desk/engine/starter.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { catalogue } from '../../../src/workshop/catalogue.ts'

const names = [...catalogue.keys()]

test('every fold of the catalogue is offered once, under a heading', () => {
  const offered = foldsOffered()
  expect(offered.map(({ name }) => name).toSorted()).toEqual(names.toSorted())
  expect(offered.filter(({ group, summary }) => group === '' || summary === '')).toEqual([])
})

test.each(names)('the picture of %s has no words in it and says what it shows', (name) => {
  const picture = foldPicture(name, 'mm')
  expect(picture?.svg).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/)
  expect(picture?.svg).toContain('<path')
  expect(picture?.svg).not.toContain('<text')
  expect(picture?.svg).not.toContain('style=')
  expect(picture?.alternative).toMatch(/\d mm/)
})

test.each(names)('the lesson to begin with for %s is without mistakes in millimetres', (name) => {
  const text = starterIn(name, 'mm') ?? ''
  expect(text).toContain('units: mm')
  expect(text).not.toMatch(/\d in\b/)
  expect(fillLesson(readLesson(text)).findings).toEqual([])
})

test('a fold that nobody knows has no picture and no lesson', () => {
  expect(foldPicture('gatefold', 'in')).toBeUndefined()
  expect(starterIn('gatefold', 'in')).toBeUndefined()
})
