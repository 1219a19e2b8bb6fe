import { expect, test } from 'vitest'
import { countInWords, doseInWords } from '../../src/lesson/amount-words.ts'
import { readCounted } from '../../src/lesson/count-text.ts'
import { readDose } from '../../src/lesson/dose.ts'
import { wordingOf } from '../../src/wording/wording.ts'

const english = wordingOf('en', 'in')

test.each([
  ['5 g', 'g', 5, '5 g'],
  ['2.5 ml', 'ml', 2.5, '2.5 ml'],
  ['1 kg', 'g', 1000, '1 kg'],
  ['1.25 litres', 'ml', 1250, '1.25 l'],
  ['3 cl', 'ml', 30, '30 ml'],
  ['7 grams', 'g', 7, '7 g'],
])('%s', (text, unit, amount, said) => {
  const dose = readDose(text)
  expect([dose?.unit, dose?.amount.valueOf(), dose && doseInWords(dose, english)]).toEqual([
    unit,
    amount,
    said,
  ])
})

test.each(['5', '5 mm', 'a little', '-5 g', '5 gsm', 'g'])('%s is no dose', (text) => {
  expect(readDose(text)).toBeUndefined()
})

test('drops are counted by their own word', () => {
  expect(['3 drops', '1 blob', '2 sheets'].map(readCounted)).toEqual([
    { count: 3, of: 'drops' },
    { count: 1, of: 'blobs' },
    undefined,
  ])
  expect([
    countInWords({ count: 1, of: 'drops' }, english),
    countInWords({ count: 4, of: 'drops' }, english),
    countInWords({ count: 4 }, english),
  ]).toEqual(['1 drop', '4 drops', '4'])
})
