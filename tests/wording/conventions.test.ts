import fc from 'fast-check'
import { expect, test } from 'vitest'
import { conventionsOf } from '../../src/wording/conventions.ts'

/** What foldlore says itself of English is checked against the platform's own data (Unicode CLDR). */
const english = ['en-GB', 'en-US'] as const

test.each(english)('lists in %s are those of the platform', (locale) => {
  const words = fc.array(fc.string({ minLength: 1 }), { maxLength: 6 })
  for (const [last, type] of [
    ['and', 'conjunction'],
    ['or', 'disjunction'],
  ] as const)
    fc.assert(
      fc.property(words, (items) => {
        const listed = new Intl.ListFormat(locale, { type }).formatToParts(items)
        expect(conventionsOf(locale).listed(items, last)).toEqual(listed.map(({ value }) => value))
      }),
    )
})

test.each(english)('the decimal sign and the months in %s are those of the platform', (locale) => {
  const { point, month } = conventionsOf(locale)
  expect(`0${point()}5`).toBe(new Intl.NumberFormat(locale).format(0.5))
  const dates = new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' })
  for (let i = 1; i <= 12; i++) expect(month(2026, i)).toBe(dates.format(Date.UTC(2026, i - 1, 15)))
})

test('months of other languages are numbered from 1 too', () => {
  expect(conventionsOf('de').month(2025, 2)).toBe('Februar 2025')
  expect(conventionsOf('es').month(2025, 12)).toBe('diciembre de 2025')
})
