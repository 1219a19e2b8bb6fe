import { describe, expect, test } from 'vitest'
import { inches, mm } from '../../src/length/length.ts'
import { type MessageKey, messageKeys, messageOf } from '../../src/wording/catalogue.ts'
import { locales } from '../../src/wording/locales.ts'
import { de } from '../../src/wording/messages/de.ts'
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

describe('German as Switzerland spells it', () => {
  const keys = messageKeys() as MessageKey[]
  const [swiss, german] = [wordingOf('de-CH', 'mm'), wordingOf('de', 'mm')]

  test('has no ß in any message, and what is put in keeps it', () => {
    expect(swiss.say('kit.size')).toBe('Grösse')
    expect(wordingOf('de-LI', 'mm').say('kit.size')).toBe('Grösse')
    expect([german.say('kit.size'), wordingOf('de-AT', 'mm').say('kit.size')]).toEqual(['Größe', 'Größe'])
    expect(swiss.say('kit.title', { title: 'Straße' })).toContain('Straße')
    const sharp = keys.filter((key) => messageOf('de', key).includes('ß'))
    expect(sharp.length).toBeGreaterThan(10)
  })

  test('says the names of foldlore so, and leaves those of the lesson', () => {
    const own = Object.entries(de.names).filter(([, name]) => name.includes('ß'))
    expect(own.length).toBeGreaterThan(0)
    for (const [name, said] of own) expect(swiss.name(name)).toBe(said.replaceAll('ß', 'ss'))
    expect(swiss.name('Straße')).toBe('Straße')
  })

  // A choice within a message is found by its name, which must not be spelt anew.
  test('chooses in a message as German does', () => {
    for (const key of keys)
      expect(messageOf('de', key).match(/[\p{L}_]*ß[\p{L}_]*(?=\s*\{)/gu) ?? []).toEqual([])
  })
})
