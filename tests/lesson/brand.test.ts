import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Colour, colourOf, contrastOf, readableOn } from '../../src/lesson/brand/colour.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { contrast } from '../draw/contrast.ts'

interface Published {
  readonly cases: readonly { is: string; text: Colour; ground: Colour; ratio: number; off: number }[]
}
const published = JSON.parse(readFileSync('tests/data/contrast-examples.json', 'utf8')) as Published

const anyColour = fc
  .integer({ min: 0, max: 0xffffff })
  .map((number): Colour => `#${number.toString(16).padStart(6, '0')}`)
const channels = (colour: string) => [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16))

describe('contrast', () => {
  test.each(published.cases)(
    '$text on $ground is $ratio, as published: $is',
    ({ text, ground, ratio, off }) => {
      expect(Math.abs(contrastOf(text, ground) - ratio)).toBeLessThanOrEqual(off + 1e-9)
    },
  )

  test('is the same either way round, and what another reading of the standard says', () => {
    fc.assert(
      fc.property(anyColour, anyColour, (a, b) => {
        expect(contrastOf(a, b)).toBe(contrastOf(b, a))
        expect(contrastOf(a, b)).toBeCloseTo(contrast(a, b), 9)
      }),
    )
  })

  test('a colour that is read easily stays, and another becomes just dark enough', () => {
    fc.assert(
      fc.property(anyColour, (colour) => {
        const printed = readableOn(colour, '#ffffff')
        expect(contrast(printed, '#ffffff')).toBeGreaterThanOrEqual(4.5)
        if (contrast(colour, '#ffffff') >= 4.5) expect(printed).toBe(colour)
        else {
          expect(contrast(printed, '#ffffff')).toBeLessThan(4.65)
          const given = channels(colour)
          expect(channels(printed).every((channel, i) => channel <= (given[i] ?? 0))).toBe(true)
        }
      }),
    )
  })

  test('on a dark ground it becomes lighter instead', () => {
    fc.assert(
      fc.property(anyColour, (colour) => {
        const shown = readableOn(colour, '#14212a')
        expect(contrast(shown, '#14212a')).toBeGreaterThanOrEqual(4.5)
        const given = channels(colour)
        expect(channels(shown).every((channel, i) => channel >= (given[i] ?? 0))).toBe(true)
      }),
    )
  })
})

test.each([
  ['#1b5e6b', '#1b5e6b'],
  ['1B5E6B', '#1b5e6b'],
  [' #Fa0 ', '#ffaa00'],
  ['#1b5e6', undefined],
  ['teal', undefined],
  ['#1b5e6b80', undefined],
  ['', undefined],
])('%j is the colour %s', (text, colour) => {
  expect(colourOf(text)).toBe(colour)
})

const told = (brand: string) => {
  const { frontMatter, findings } = readLesson(`---\ntitle: Gulls\n${brand}\n---\n\n1. Cut.\n`)
  return { brand: frontMatter.brand, findings }
}

test('a lesson says what its workshop puts on prints', () => {
  const { brand, findings } = told(
    'brand:\n  logo: mark.svg\n  name: Quillhaven paper table\n  accent: "#1b5e6b"\n  second: 6a3d7c\n  footer: At the old\n    lamp house',
  )
  expect(findings).toEqual([])
  expect(brand).toMatchObject({
    logo: { value: 'mark.svg', place: { line: 4, column: 9 } },
    name: { value: 'Quillhaven paper table' },
    accent: { value: '#1b5e6b' },
    second: { value: '#6a3d7c' },
    footer: { value: 'At the old lamp house' },
  })
})

test.each([
  ['  acent: "#1b5e6b"', 4, 3, 'Unexpected key `acent` in `brand`', 'Write `accent`'],
  ['  accent: teal', 4, 11, '`teal` is no colour', 'Write six digits in quotes, such as `accent: "#1b5e6b"`'],
  [
    '  accent: #1b5e6b',
    4,
    11,
    '`accent` has no colour: what follows a `#` outside quotes is left out',
    'Write six digits in quotes, such as `accent: "#1b5e6b"`',
  ],
  ['  second: [a, b]', 4, 11, 'This is no colour', 'Write six digits in quotes, such as `second: "#1b5e6b"`'],
  ['  logo: {a: b}', 4, 9, '`logo` wants a text', 'Write `logo: harbour-mark.svg`'],
])('%s: what is wrong is told where it is, with its cure', (line, row, column, message, suggestion) => {
  const { findings } = told(`brand:\n${line}`)
  expect(findings).toMatchObject([{ severity: 'warning', message, suggestion, place: { line: row, column } }])
})

test('a brand that is no group of keys is told', () => {
  expect(told('brand: harbour-mark.svg').findings).toMatchObject([
    { message: '`brand` wants keys, but there is a text here', place: { line: 3, column: 8 } },
  ])
})

test('a faint colour is told with its contrast, and the nearest darker one that is read is printed', () => {
  const { brand, findings } = told('brand: {accent: "#7fb3c0"}')
  const printed = brand?.accent?.value ?? '#000000'
  expect(findings).toMatchObject([
    {
      rule: 'faint-colour',
      severity: 'warning',
      message: `\`accent\` has a contrast of 2.3:1 on white, and words want 4.5:1, so \`${printed}\` is printed`,
      suggestion: `Write \`accent: "${printed}"\`, which is the nearest darker one, or one that is darker still`,
      place: { line: 3, column: 17 },
    },
  ])
  expect(contrast('#7fb3c0', '#ffffff')).toBeGreaterThanOrEqual(2.3)
  expect(contrast('#7fb3c0', '#ffffff')).toBeLessThan(2.4)
  expect(contrast(printed, '#ffffff')).toBeGreaterThanOrEqual(4.5)
})
