import { parse } from '@formatjs/icu-messageformat-parser'
import { expect, test } from 'vitest'
import { catalogues } from '../../src/wording/languages.ts'
import { type Locale, locales } from '../../src/wording/locales.ts'

type Texts = Readonly<Record<string, Readonly<Record<string, string>>>>
const textsOf = (locale: Locale): Map<string, string> =>
  new Map(
    Object.entries(catalogues[locale] as Texts).flatMap(([area, messages]) =>
      Object.entries(messages).map(([name, text]) => [`${area}.${name}`, text] as const),
    ),
  )
const british = textsOf('en-GB')

/** What is put into a message, and how: `count plural`. */
function valuesOf(text: string): string[] {
  const found = new Set<string>()
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) {
      for (const one of value) walk(one)
      return
    }
    if (typeof value !== 'object' || value === null) return
    const { type, value: name, options } = value as { type?: number; value?: string; options?: object }
    // Argument, number, date, time, select and plural; a literal is 0 and the number sign 7.
    if (type !== undefined && type >= 1 && type <= 6 && name !== undefined) found.add(name)
    if (options) for (const option of Object.values(options)) walk((option as { value: unknown }).value)
  }
  walk(parse(text, { ignoreTag: true }))
  return [...found].sort()
}

test.each(['de', 'fr', 'es'] as const)('%s has every message, and no other', (locale) => {
  expect([...textsOf(locale).keys()].sort()).toEqual([...british.keys()].sort())
})

test('American English has only what is spelt otherwise', () => {
  const american = textsOf('en-US')
  expect([...american.keys()].filter((key) => british.get(key) === undefined)).toEqual([])
  expect([...american].filter(([key, text]) => british.get(key) === text)).toEqual([])
  // A few words that the two spell in two ways, from memory.
  const all = new Map([...british, ...american])
  const wrong = [...all].filter(([, text]) =>
    /\b(?:colour|grey|centre|metre|millimetre|centimetre|practise|licence|favourite|mould|organis|recognis)/i.test(
      text,
    ),
  )
  expect(wrong).toEqual([])
})

test.each(locales)(
  'every message of %s is well-formed and has the same put in as in British English',
  (locale) => {
    for (const [key, text] of textsOf(locale)) {
      expect(text.trim(), key).not.toBe('')
      expect([key, valuesOf(text)]).toEqual([key, valuesOf(british.get(key) ?? '')])
    }
  },
)

test('a plural has every form that its language asks for', () => {
  for (const locale of locales)
    for (const [key, text] of textsOf(locale))
      for (const options of pluralsOf(text)) {
        const { pluralCategories } = new Intl.PluralRules(locale).resolvedOptions()
        // French and Spanish have a form for millions, which nothing here counts in.
        const wanted = pluralCategories.filter((form) => form !== 'many')
        expect([key, wanted.filter((form) => !options.includes(form))]).toEqual([key, []])
      }
})

/** The forms of each plural of a message. */
function pluralsOf(text: string): string[][] {
  const found: string[][] = []
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) {
      for (const one of value) walk(one)
      return
    }
    if (typeof value !== 'object' || value === null) return
    const { type, options } = value as { type?: number; options?: object }
    if (type === 6 && options) found.push(Object.keys(options))
    if (options) for (const option of Object.values(options)) walk((option as { value: unknown }).value)
  }
  walk(parse(text, { ignoreTag: true }))
  return found
}

test('in French no line breaks before a mark that has a space before it, nor within quotes', () => {
  const broken = [...textsOf('fr')].filter(([, text]) => / [:;?!»]|« /.test(text))
  expect(broken).toEqual([])
})
