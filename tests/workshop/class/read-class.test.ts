import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inches, mm } from '../../../src/length/length.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'

const saturday = `lesson: lessons/harbour-lights.md
people: 14
spare: 2
currency: £
sheets:
  dark blue card: {size: 12 x 12 in, price: 0.60, have: 4, pack: 10, grain: long}
  patterned paper: {size: 8 x 8 in, price: 0.45, direction: upright}
  vellum: [{size: A4, price: 0.50, limit: 6, offcuts: [A5, 3 of 4 x 6 in]}, A3]
supplies:
  double-sided tape: {roll: 10 m, price: 2.20, have: 3 m}
  pearl dots: {pack: 100, price: £1.80}
`

describe('a class file', () => {
  const { file, findings } = readClass(saturday)

  test('reads without a word', () => {
    expect(findings).toEqual([])
    expect(file).toMatchObject({ people: 14, spare: 2, currency: '£' })
    expect(file.lessons.map(({ path }) => path)).toEqual(['lessons/harbour-lights.md'])
  })

  test('sheets have their size, price and what else is said of them', () => {
    expect(file.sheets.get('dark blue card')).toMatchObject([
      { size: { width: inches(12), height: inches(12) }, have: 4, pack: 10, grain: 'long', offcut: false },
    ])
    expect(file.sheets.get('dark blue card')?.[0]?.price?.toFraction()).toBe('3/5')
    expect(file.sheets.get('patterned paper')?.[0]?.direction).toBe('upright')
  })

  test('offcuts come before what is bought, and are there already', () => {
    const vellum = file.sheets.get('vellum') ?? []
    expect(
      vellum.map(({ size, have, limit, offcut }) => [size.width.valueOf(), have, limit, offcut]),
    ).toEqual([
      [148, 1, 1, true],
      [101.6, 3, 3, true],
      [210, 0, 6, false],
      [297, 0, undefined, false],
    ])
  })

  test('supplies are sold by the roll or by the pack', () => {
    expect(file.supplies.get('double-sided tape')).toMatchObject({
      sold: { kind: 'roll', length: mm(10_000) },
      have: { kind: 'length', length: mm(3000) },
    })
    expect(file.supplies.get('pearl dots')?.price?.toFraction()).toBe('9/5')
  })

  test('several lessons each have their own people, size and choices', () => {
    const { file: two, findings: none } = readClass(`people: 14
lessons:
  - harbour-lights.md
  - lesson: beach-hut-doors.md
    people: 6
    closed: A6
    choices: {white card: {white card: 4, cream card: 2}}
`)
    expect(none).toEqual([])
    expect(two.lessons).toMatchObject([
      { path: 'harbour-lights.md', choices: [] },
      {
        path: 'beach-hut-doors.md',
        people: 6,
        closed: { width: mm(105) },
        choices: [
          {
            stock: 'white card',
            takes: [
              { stock: 'white card', people: 4 },
              { stock: 'cream card', people: 2 },
            ],
          },
        ],
      },
    ])
  })
})

describe('what is wrong is told with its place and a cure', () => {
  const told = (text: string) =>
    readClass(text).findings.map(
      ({ rule, place, message }) => `${place?.line}:${place?.column} ${rule}: ${message}`,
    )

  test.each([
    ['people: 3\nlesson: a.md\nsheats: {}', ['3:1 unknown-key: Unexpected key `sheats` in the class file']],
    ['lesson: a.md', ['1:1 missing-key: The class does not say how many people come']],
    ['people: 3', ['1:1 missing-key: The class has no lesson']],
    ['people: many\nlesson: a.md', ['1:9 value: `many` is no number of `people`']],
    ['people: 3\nlesson: a.md\nsheets: {blue: {price: 1}}', ['3:16 missing-key: This sheet has no size']],
    [
      'people: 3\nlesson: a.md\nsheets: {blue: {size: A9}}',
      ['3:23 unknown-size: Unexpected size `A9`, expected width × height or the name of a standard sheet'],
    ],
    [
      'people: 3\nlesson: a.md\nsheets: {blue: {size: A4, price: cheap}}',
      ['3:34 value: `cheap` is no price'],
    ],
    [
      'people: 3\nlesson: a.md\nsheets: {blue: {size: A4, trim: 110 mm}}',
      ['3:27 value: Trimmed by this, nothing is left of the sheet'],
    ],
    [
      'people: 5\nlesson: a.md\nchoices: {blue: {blue: 2, green: 2}}',
      ['3:11 choices: 4 people choose for `blue`, but 5 make this lesson'],
    ],
    [
      'people: 5\nlesson: a.md\nsupplies: {tape: {roll: 10 m, pack: 3}}',
      ['3:31 value: It is sold by the `roll` or by the `pack`, not both'],
    ],
    [
      'people: 5\nlesson: a.md\nsupplies: {glue: {bottle: 5}}',
      ['3:27 value: `5` is nothing that is in a bottle'],
    ],
    ['people: 5\nlesson: a.md\nsupplies: {glue: {have: lots}}', ['3:25 value: `lots` is no amount']],
    [
      'people: 5\nlesson: a.md\nsupplies: {glue: {have: 0 in x -4 in}}',
      ['3:25 value: `have` cannot be less than nothing'],
    ],
    [
      'people: 5\nlesson: a.md\nsupplies: {film: {sheet: 0 x 4 in}}',
      ['3:26 value: A sheet is larger than nothing'],
    ],
    [
      'people: 5\nlesson: a.md\nsheets: {card: {size: A4, weight: 0 gsm}}',
      ['3:35 value: A sheet weighs more than nothing'],
    ],
    [
      'people: 5\nlesson: a.md\nsupplies: {tape: {roll: 10 m, price: 1,80}}',
      ['3:40 value: Between braces a comma ends a value'],
    ],
  ])('%j', (text, expected) => {
    expect(told(text)).toEqual(expected)
    for (const { suggestion } of readClass(text).findings) expect(suggestion).toMatch(/\S/)
  })

  test('no text at all makes it crash or say nothing', () => {
    const words = fc.constantFrom(
      ...saturday.split(/(?<=\W)/),
      '{',
      '[',
      ']',
      ':',
      '\n',
      '  ',
      '-',
      '99999999999999999999 in',
    )
    fc.assert(
      fc.property(fc.array(words, { maxLength: 40 }), (parts) => {
        const { findings } = readClass(parts.join(''))
        for (const { message, place } of findings) {
          expect(message).not.toMatch(/undefined|NaN|null/)
          expect(place?.line).toBeGreaterThan(0)
        }
      }),
      { numRuns: 300 },
    )
  })
})

test('nothing is missing in a file that cannot be read', () => {
  const rules = (text: string) => [...new Set(readClass(text).findings.map(({ rule }) => rule))]
  expect(rules(`${saturday}  more: {${'a: 1, '.repeat(20_000)}}\n`)).toEqual(['too-much'])
  expect(rules('lesson: harbour.md\nshop: {glue: [tape}\n')).toEqual(['yaml'])
  expect(rules('people: 14\n')).toEqual(['missing-key'])
})
