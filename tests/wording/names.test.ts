import { describe, expect, test } from 'vitest'
import { envelopeMakes } from '../../src/card/envelope.ts'
import { foldStyles } from '../../src/card/fold-styles.ts'
import type { Structure } from '../../src/card/structure.ts'
import { type FoldStyle, wordsOf } from '../../src/card/style.ts'
import { type Locale, locales } from '../../src/wording/locales.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { cardOf } from '../draw/cards.ts'

const others = locales.filter((locale) => !locale.startsWith('en'))

/** The card block without what a teacher adds to it. */
const bare = (starter: string): string =>
  starter.replace(/^(?:layers|spans|lettering|apertures|pieces):\n(?: .*\n?)*/gm, '')

/** The starter, and the bare card with each of its choices and with the least and the most of each of its counts. */
function blocksOf({ starter, choices = {}, counts = {} }: FoldStyle): string[] {
  const values = [
    ...Object.entries(choices).map(([key, choice]) => [key, wordsOf(choice)] as const),
    ...Object.entries(counts).map(
      ([key, { least, usual }]) => [key, [least, usual + 1].map(String)] as const,
    ),
  ]
  const without = bare(starter)
  const chosen = values.flatMap(([key, words]) =>
    words.map((word) =>
      without
        .replace(new RegExp(`^${key}:.*\n`, 'm'), '')
        .replace(/^closed:/m, () => `${key}: ${word}\nclosed:`),
    ),
  )
  return [starter, ...chosen]
}

const namesIn = ({ plates, pieces }: Structure): string[] => [
  ...plates.map(({ name }) => name),
  ...pieces.flatMap(({ name, stock }) => [name, stock.name]),
]

/** The same in two languages, as the trade has it. */
const alike = new Set(['base', 'message', 'tunnel', 'panel'])

/** The names that stay as they are in a language. */
const unsaid = (names: readonly string[], locale: Locale): string[] =>
  names.filter((own) => wordingOf(locale, 'mm').name(own) === own && !alike.has(own.replace(/ \d+$/, '')))

describe.each([...foldStyles.values()])('$name', (style) => {
  const cards = blocksOf(style).map((block) => cardOf(block).card)
  const names = [
    style.name,
    ...Object.keys(style.panels),
    ...(style.pieces ?? []),
    ...cards.flatMap(({ structure }) => namesIn(structure)),
  ]

  test.each(others)('every name has a word of its own in %s', (locale) => {
    expect(unsaid(names, locale)).toEqual([])
  })

  test.each(locales)('no two parts of a card have one name in %s', (locale) => {
    const { name } = wordingOf(locale, 'mm')
    for (const { structure } of cards) {
      const plates = structure.plates.map((plate) => plate.name)
      expect(new Set(plates.map(name)).size).toBe(new Set(plates).size)
      const pieces = structure.pieces.map((piece) => piece.name)
      expect(new Set(pieces.map(name)).size).toBe(new Set(pieces).size)
    }
  })

  test.each(['en-GB', 'nl'])('in %s a name is itself', (lang) => {
    expect(names.map(wordingOf(lang, 'mm').name)).toEqual(names)
  })
})

test.each(others)(
  'every part of an envelope, and what is not said of a sheet, has a word in %s',
  (locale) => {
    const parts = envelopeMakes.flatMap((make) => {
      const { envelope } = cardOf(`fold: side\nclosed: 5 x 7 in\nenvelope: ${make}`).card
      return envelope ? namesIn(envelope.structure) : []
    })
    expect(parts).toContain('envelope paper')
    expect(unsaid([...parts, 'paper', 'card', 'free'], locale)).toEqual([])
  },
)

test.each([
  ['de', 'panel 12', 'Feld 12'],
  ['de', 'bar 2 left tab', 'linke Lasche an Steg 2'],
  ['fr', 'picture on panel 3', 'image sur panneau 3'],
  ['es', 'Hafen on left door', 'Hafen en puerta izquierda'],
  ['en-US', 'centre front', 'center front'],
  ['de', 'Hafenmauer 2', 'Hafenmauer 2'],
  ['de', 'constructor', 'constructor'],
])('in %s `%s` is `%s`', (lang, name, said) => {
  expect(wordingOf(lang, 'mm').name(name)).toBe(said)
})
