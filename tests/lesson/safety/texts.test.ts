import { describe, expect, test } from 'vitest'
import { hazards } from '../../../src/lesson/safety/hazards.ts'
import { topicsIn } from '../../../src/lesson/safety/spoken-of.ts'
import { ways } from '../../../src/lesson/safety/ways.ts'
import { locales } from '../../../src/wording/locales.ts'
import { wordingOf } from '../../../src/wording/wording.ts'

describe.each(locales)('the cautions in %s', (locale) => {
  const { say } = wordingOf(locale, 'mm')

  test.each(hazards.map(({ name }) => name))('on %s speaks of it, and of an adult for children', (name) => {
    const caution = say(`cautions.${name}`)
    const children = say(`cautions.${name}-children`)
    expect(topicsIn(caution, locale)).toContain(name)
    expect(children).toMatch(ways[locale].adult)
    expect(caution).not.toMatch(ways[locale].adult)
    for (const sentence of [...caution.split(/(?<=\.)\s/), children])
      expect(sentence).toMatch(/^\p{Lu}.*\.$/su)
    expect(say(`cautions.${name}-title`)).toMatch(/^\p{Lu}[^.]*$/u)
    expect(caution.split(/\s+/).length).toBeLessThan(80)
  })

  test('say the same numbers as in English', () => {
    const british = wordingOf('en-GB', 'mm')
    for (const { name } of hazards)
      expect(say(`cautions.${name}`).match(/\d+/g), name).toEqual(
        british.say(`cautions.${name}`).match(/\d+/g),
      )
  })

  test('put a text in the print that asks for an adult, without a number of them', () => {
    expect(say('cautions.children')).toMatch(ways[locale].adult)
    expect(say('cautions.children')).not.toMatch(/\d/)
  })
})
