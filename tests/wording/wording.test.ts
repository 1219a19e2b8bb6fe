import { expect, test } from 'vitest'
import { inches, mm } from '../../src/length/length.ts'
import { locales } from '../../src/wording/locales.ts'
import { wordingOf } from '../../src/wording/wording.ts'

test.each([
  ['en', '12.5 mm', '7 1/2 × 5 in', '1, 2.5 and 3 mm'],
  ['de', '12,5 mm', '7 1/2 × 5 in', '1; 2,5 und 3 mm'],
  ['fr', '12,5 mm', '7 1/2 × 5 po', '1; 2,5 et 3 mm'],
  ['es', '12,5 mm', '7 1/2 × 5 in', '1; 2,5 y 3 mm'],
])('measures in %s', (lang, length, size, lengths) => {
  const metric = wordingOf(lang, 'mm')
  expect(metric.length(mm(12.5))).toBe(length)
  expect(metric.in('in').size({ width: inches(15, 2), height: inches(5) })).toBe(size)
  expect(metric.lengths([mm(1), mm(2.5), mm(3)])).toBe(lengths)
})

// The outside source of units and of the decimal sign is the locale data of Unicode (CLDR), as the platform has it.
test.each(locales)('%s writes a unit as the locale data has it', (locale) => {
  const short = (unit: string) =>
    new Intl.NumberFormat(locale, { style: 'unit', unit, unitDisplay: 'short' })
      .format(12.5)
      .replace(/\s/g, ' ')
  expect(wordingOf(locale, 'mm').length(mm(12.5))).toBe(short('millimeter'))
  const half = locale.startsWith('en') ? '12.5' : '12,5'
  expect(wordingOf(locale, 'in').length(inches(25, 2)).replace('12 1/2', half)).toBe(short('inch'))
})

test('a name of foldlore is said in the language, and a name of the lesson stays', () => {
  expect(wordingOf('de', 'mm').name('Hafenmauer')).toBe('Hafenmauer')
})

test('a language without words speaks English, and keeps its own tag', () => {
  const { lang, locale } = wordingOf('nl', 'mm')
  expect([lang, locale]).toEqual(['nl', 'en-GB'])
})
