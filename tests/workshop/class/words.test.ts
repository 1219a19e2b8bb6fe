import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { wordingOf } from '../../../src/wording/wording.ts'
import { timeText } from '../../../src/workshop/class/clock.ts'
import { durationText } from '../../../src/workshop/class/duration.ts'
import { moneyText } from '../../../src/workshop/class/money-text.ts'

// As these languages write money; the spaces before a sign are narrow or not, and no line breaks at them.
test.each([
  ['en', '£', '£1234.50'],
  ['en', 'EUR', '1234.50 EUR'],
  ['de', '€', '1234,50 €'],
  ['de', 'CHF', '1234,50 CHF'],
  ['fr', '€', '1234,50 €'],
  ['es', '', '1234,50'],
])('money in %s with `%s`', (lang, currency, said) => {
  const text = moneyText(new Fraction('1234.5'), currency, wordingOf(lang, 'mm'))
  expect(text.replace(/[\u00a0\u202f]/g, ' ')).toBe(said)
})

test.each([
  ['en', '09:05'],
  ['en-US', '9:05 AM'],
  ['de', '09:05'],
  ['fr', '09:05'],
  ['es', '9:05'],
])('a time of day in %s', (lang, said) => {
  const text = timeText(9 * 60 + 5, wordingOf(lang, 'mm'))
  expect(text.replace(/[\u00a0\u202f]/g, ' ')).toBe(said)
})

test.each([
  ['de', '1 Minute', '2 Minuten', '1 h 40 min'],
  ['fr', '1 minute', '2 minutes', '1 h 40 min'],
  ['es', '1 minuto', '2 minutos', '1 h 40 min'],
])('how long something takes in %s', (lang, one, two, long) => {
  const wording = wordingOf(lang, 'mm')
  expect([1, 2, 100].map((minutes) => durationText(minutes, wording))).toEqual([one, two, long])
})
