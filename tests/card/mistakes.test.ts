import { describe, expect, test } from 'vitest'
import { check } from './block.ts'

const bridge = 'fold: bridge\nclosed: 7 x 5 in\n'

/** Every mistake has a rule, a place and a cure. */
describe('mistakes in a card block', () => {
  test.each([
    ['unknown fold', 'fold: brigde\nclosed: 7 x 5 in', 'unknown-fold', 1, 7, 'Write `bridge`'],
    ['no fold', 'closed: 7 x 5 in', 'missing-key', 1, 1, 'Add `fold:`'],
    ['no size', 'fold: side', 'missing-key', 1, 1, 'Add `closed:`'],
    ['unknown key', `${bridge}legs: 1 in`, 'unknown-key', 3, 1, 'Write `leg`'],
    ['a length without a unit', `${bridge}leg: 3/4`, 'no-unit', 3, 6, 'Write `3/4 in`'],
    ['a unit nobody uses', `${bridge}leg: 3 furlongs`, 'expression', 3, 8, 'Units are'],
    ['a misspelt layer', `${bridge}layers:\n  a: {on: flor}`, 'unknown-name', 4, 11, 'Write `floor`'],
    [
      'a misspelt name in an expression',
      `${bridge}leg: closd.width / 8`,
      'unknown-name',
      3,
      6,
      'Write `closed.width`',
    ],
    ['a misspelt part', `${bridge}leg: closed.widht / 8`, 'unknown-name', 3, 6, 'Write `closed.width`'],
    ['a leg too long', `${bridge}leg: 3 1/2 in`, 'impossible-size', 3, 6, 'at most 3 1/4 in'],
    ['a tab too long', `${bridge}leg: 1 in\ntab: 4 in`, 'impossible-size', 4, 6, 'at most 3 1/4 in'],
    ['no width', 'fold: side\nclosed: 0 x 5 in', 'impossible-size', 2, 9, 'Give both'],
    [
      'a slip of many digits',
      `${bridge}envelope: {clearance: 12345678901234567890 mm}`,
      'too-long',
      3,
      23,
      '10 m',
    ],
    ['a card as long as a street', 'fold: side\nclosed: 99999 x 5 in', 'too-long', 2, 9, '10 m'],
    [
      'a sheet as heavy as a house',
      `${bridge}base: {weight: 12345678901234567890 gsm}`,
      'weight',
      3,
      16,
      '300 gsm',
    ],
    ['a size that is a length', 'fold: side\nclosed: 5 in', 'size', 2, 9, '7 x 5 in'],
    ['a circle of names', `${bridge}leg: base.width / 8`, 'name-circle', 3, 6, 'Give `leg`'],
    ['a layer on itself', `${bridge}layers:\n  a: {on: a}`, 'name-circle', 4, 11, 'Give `a`'],
    [
      'a border that leaves nothing',
      `${bridge}layers:\n  a: {on: floor, border: 3 in}`,
      'no-room',
      4,
      26,
      'smaller',
    ],
    [
      'a border below zero',
      `${bridge}layers:\n  a: {on: floor, border: -1/8 in}`,
      'sticks-out',
      4,
      26,
      '0 or more',
    ],
    ['a layer that is on nothing', `${bridge}layers:\n  a: {stock: paper}`, 'missing-key', 4, 3, 'Add `on:`'],
    [
      'panels unlike each other',
      `${bridge}layers:\n  a: {on: [floor, left tab]}`,
      'unlike-panels',
      4,
      11,
      'of its own',
    ],
    ['a span too high', `${bridge}spans:\n  a: {height: 6 in}`, 'sticks-out', 4, 15, 'at most 5 in'],
    [
      'a span without a place',
      'fold: side\nclosed: 5 x 7 in\nspans:\n  a: {height: 1 in}',
      'unknown-name',
      4,
      3,
      'Write `from:`',
    ],
    [
      'letters too wide',
      `${bridge}spans:\n  a: {height: 1 in}\nlettering:\n  n: {on: a, letters: HARBOUR, widths: 1 in}`,
      'letters-too-wide',
      6,
      40,
      'at most 7/8 in',
    ],
    [
      'a margin below zero',
      `${bridge}spans:\n  a: {height: 1 in}\nlettering:\n  n: {on: a, letters: HARBOUR, margin: -1/4 in}`,
      'sticks-out',
      6,
      40,
      '0 or more',
    ],
    [
      'a window without a rim',
      `${bridge}apertures:\n  w: {on: floor, size: 3 x 5 in}`,
      'no-rim',
      4,
      24,
      '1/8 in',
    ],
    ['a name twice', `${bridge}layers:\n  floor: {on: floor}`, 'name-taken', 4, 3, 'of its own'],
    ['a weight without a grade', `${bridge}base: {weight: 110 lb}`, 'weight', 3, 16, '110 lb cover'],
    ['a word that is not known', `${bridge}envelope: {make: diagnal}`, 'value', 3, 18, 'Write `diagonal`'],
    ['a key twice', `${bridge}leg: 1 in\nleg: 2 in`, 'yaml', 4, 1, 'Give each key once'],
    ['an open bracket', `${bridge}layers: {a: [1, 2`, 'yaml', 3, 18, 'Close the bracket'],
    ['a tongue too wide', 'fold: z\nclosed: 5 x 7 in\ntongue: 6 in', 'impossible-size', 3, 9, 'at most 5 in'],
    [
      'a stop too far',
      'fold: easel\nclosed: 5 x 5 in\nstop: 5 in',
      'impossible-size',
      3,
      7,
      'less than 5 in',
    ],
    [
      'doors with no width',
      'fold: gate\nclosed: 5 x 7 in\npart: 5 in',
      'impossible-size',
      3,
      7,
      'at most 4 7/8 in',
    ],
    ['free without panels', 'fold: free\nclosed: 5 x 7 in', 'missing-key', 1, 1, 'Add `panels:`'],
    [
      'free with a crease too few',
      'fold: free\nclosed: 5 x 7 in\npanels: {a: 1 in, b: 1 in}',
      'value',
      3,
      1,
      'List 1 crease',
    ],
  ])('%s', (_, text, rule, line, column, cure) => {
    const { card, findings } = check(text)
    expect(card).toBeUndefined()
    const found = findings.find((f) => f.rule === rule)
    expect([found?.place?.line, found?.place?.column], JSON.stringify(findings)).toEqual([line, column])
    expect(found?.suggestion).toContain(cure)
  })

  test('several mistakes come at once', () => {
    const { findings } = check(
      `${bridge}legs: 1\ntab: 1/4\nlayers:\n  a: {on: flor, border: 1/8}\n  b: {on: floor, stok: paper}`,
    )
    expect(findings.map((f) => f.rule).sort()).toEqual([
      'no-unit',
      'no-unit',
      'unknown-key',
      'unknown-key',
      'unknown-name',
    ])
  })

  test('a layer that touches a closing crease is a warning, and the card is still made', () => {
    const { card, findings } = check(`${bridge}layers:\n  a: {on: floor}`)
    expect(card).toBeDefined()
    expect(findings.map((f) => [f.rule, f.severity, f.suggestion])).toEqual([
      ['setback', 'warning', 'Leave a border of at least 1/16 in at its left edge, or write `auto` for it'],
      ['setback', 'warning', 'Leave a border of at least 1/16 in at its right edge, or write `auto` for it'],
    ])
  })

  test('a long thin card gets a side seam and is told why', () => {
    const { card, findings } = check('fold: side\nclosed: 9 x 3 in\nenvelope: {make: diagonal}')
    expect([card?.envelope?.make, findings[0]?.rule, findings[0]?.severity]).toEqual([
      'side seam',
      'long-card',
      'warning',
    ])
  })
})
