import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { areaOf } from '../../../src/length/area.ts'
import { inches, mm, type zero } from '../../../src/length/length.ts'
import { purchaseOf, purchaseOfSheets, totalOf } from '../../../src/workshop/class/buying.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { supplyFindings } from '../../../src/workshop/class/supply-findings.ts'
import type { Quantity } from '../../../src/workshop/needs.ts'

const place = { line: 1, column: 1 }
const tape = (have?: { kind: 'length'; length: typeof zero } | { kind: 'count'; count: number }) => ({
  place,
  sold: { kind: 'roll' as const, length: mm(10_000) },
  price: new Fraction('2.20'),
  ...(have && { have }),
})
// Worked by hand: 612 in are 15 544.8 mm.
const needed = { item: 'tape', need: { kind: 'length' as const, length: inches(612) } }

describe('supplies by the roll', () => {
  test('two rolls of 10 m make 15.5 m', () => {
    const { count, cost } = purchaseOf(needed, tape())
    expect([count, cost?.toFraction()]).toEqual([2, '22/5'])
  })
  test('6 m that are there leave 9.5 m, which is one roll', () => {
    expect(purchaseOf(needed, tape({ kind: 'length', length: mm(6000) })).count).toBe(1)
  })
  test('two whole rolls that are there are enough', () => {
    const { count, cost } = purchaseOf(needed, tape({ kind: 'count', count: 2 }))
    expect([count, cost?.valueOf()]).toEqual([0, 0])
  })
  test('a roll that fits to the millimetre is not bought twice', () => {
    const exact = { item: 'tape', need: { kind: 'length' as const, length: mm(20_000) } }
    expect(purchaseOf(exact, tape()).count).toBe(2)
  })
})

describe('supplies by the pack, one by one, and as the teacher put it', () => {
  const dots = { item: 'pearl dots', need: { kind: 'count' as const, count: 90 } }
  test('90 dots are one pack of 100, or two of 50', () => {
    const pack = (count: number) => purchaseOf(dots, { place, sold: { kind: 'pack', count } }).count
    expect([pack(100), pack(50)]).toEqual([1, 2])
  })
  test('those that are there are taken off', () => {
    expect(purchaseOf(dots, { place, have: { kind: 'count', count: 85 } }).count).toBe(5)
    expect(purchaseOf(dots, { place, have: { kind: 'count', count: 100 } }).count).toBe(0)
  })
  test('what nobody sells is wanted as it is', () => {
    expect(purchaseOf(dots, undefined)).toMatchObject({ count: 90 })
    expect(
      purchaseOf({ item: 'glue', need: { kind: 'text', text: 'a little' } }, undefined).count,
    ).toBeUndefined()
  })
  test('a length is not counted in packs', () => {
    expect(purchaseOf(needed, { place, sold: { kind: 'pack', count: 3 } }).count).toBeUndefined()
  })
})

/** How a supply is sold, as a class file says it. */
function offerOf(text: string) {
  const { file, findings } = readClass(`lesson: a.md\npeople: 1\nsupplies: {it: ${text}}`)
  expect(findings).toEqual([])
  return file.supplies.get('it')
}

describe('supplies by area', () => {
  // 16 pieces of 8 1/2 × 5 in are 680 sq in; a sheet of 8 × 12 in is 96 sq in, and 680 / 96 is 7.08.
  const glue = {
    item: 'it',
    need: { kind: 'area' as const, area: areaOf({ width: inches(136), height: inches(5) }) },
  }
  test.each([
    ['{sheet: 8 x 12 in, price: 0.90}', 8, '36/5'],
    ['{sheet: 8 x 12 in, price: 0.90, have: 1}', 7, '63/10'],
    ['{sheet: 8 x 12 in, price: 0.90, have: 8 x 1 in}', 7, '63/10'],
    ['{sheet: 8 x 12 in, price: 0.90, have: 7 sq in}', 8, '36/5'],
    ['{sheet: 34 x 20 in, price: 2}', 1, '2'],
    ['{sheet: 34 x 20 in, price: 2, have: 1}', 0, '0'],
  ])('680 sq in from %s', (text, count, cost) => {
    const purchase = purchaseOf(glue, offerOf(text))
    expect([purchase.count, purchase.cost?.toFraction()]).toEqual([count, cost])
  })
})

describe('supplies by the dose', () => {
  const grams = (n: number) => ({
    item: 'it',
    need: { kind: 'dose' as const, dose: { unit: 'g' as const, amount: new Fraction(n) } },
  })
  test.each([
    ['{bottle: 100 g, price: 2}', 80, 1],
    ['{bottle: 100 g, price: 2}', 100, 1],
    ['{bottle: 100 g, price: 2}', 101, 2],
    ['{tube: 0.02 kg, have: 45 g}', 80, 2],
    ['{pot: 100 g, have: 1}', 80, 0],
    ['{bottle: 120 ml}', 80, undefined],
    ['{bottle: 300 drops}', 80, undefined],
  ])('%s for %i g', (text, need, count) => {
    expect(purchaseOf(grams(need), offerOf(text)).count).toBe(count)
  })

  test('48 drops are one pot of 300 drops, and no number of things', () => {
    const ink = { item: 'it', need: { kind: 'count' as const, count: 48, of: 'drops' } }
    expect(purchaseOf(ink, offerOf('{pot: 300 drops}')).count).toBe(1)
    expect(purchaseOf(ink, offerOf('{pot: 30 drops, have: 20 drops}')).count).toBe(1)
    expect(purchaseOf(ink, offerOf('{pack: 10}')).count).toBeUndefined()
    expect(purchaseOf(ink, undefined).count).toBeUndefined()
  })
})

describe('what is sold in another measure than it is used in is told with the cure', () => {
  const told = (sold: string, need: Quantity) =>
    supplyFindings(
      { supplies: new Map([['it', offerOf(sold) ?? { place }]]) },
      [{ item: 'it', need }],
      'in',
    ).map(({ rule, message, suggestion }) => [rule, message, suggestion])
  test('grams against millilitres', () => {
    expect(told('{bottle: 120 ml}', { kind: 'dose', dose: { unit: 'g', amount: new Fraction(80) } })).toEqual(
      [
        [
          'other-measure',
          '`it` is used up as 80 g in all, and sold as a bottle of 120 ml: one cannot be counted in the other',
          'Say both in grams, or both in millilitres: here or in the lesson, `bottle: 100 g`',
        ],
      ],
    )
  })
  test.each([
    ['{pack: 3}', needed.need, 'Say how long a roll is, such as `roll: 10 m`'],
    ['{roll: 3 m}', { kind: 'count', count: 3 }, 'Say how many are in a pack, such as `pack: 100`'],
    [
      '{roll: 3 m}',
      { kind: 'area', area: areaOf({ width: mm(9), height: mm(9) }) },
      'Say how large a sheet is, such as `sheet: 8 x 12 in`',
    ],
    [
      '{pack: 3}',
      { kind: 'count', count: 3, of: 'drops' },
      'Say how many drops there are in a bottle, such as `bottle: 300 drops`',
    ],
    [
      '{pack: 3}',
      { kind: 'dose', dose: { unit: 'ml', amount: new Fraction(1) } },
      'Say what a bottle holds, such as `bottle: 100 ml`',
    ],
  ] as const)('%s', (sold, need, cure) => {
    expect(told(sold, need).map(([, , suggestion]) => suggestion)).toEqual([cure])
  })
  test('what fits, and what nobody can measure, is not told', () => {
    expect(told('{roll: 3 m}', needed.need)).toEqual([])
    expect(told('{roll: 3 m}', { kind: 'text', text: 'a little' })).toEqual([])
  })
})

describe('sheets', () => {
  const sheet = {
    size: { width: inches(12), height: inches(12) },
    place,
    have: 4,
    pack: 10,
    offcut: false,
    price: new Fraction('0.6'),
  }
  test('16 sheets with 4 there are 12, which is 2 packs of 10 at 0.60 a sheet: 12.00', () => {
    const { count, cost } = purchaseOfSheets('dark blue card', sheet, 16)
    expect([count, cost?.valueOf()]).toEqual([2, 12])
  })
  test('offcuts are never bought', () => {
    expect(purchaseOfSheets('vellum', { ...sheet, offcut: true }, 3).count).toBe(0)
  })
  test('what has no price is left out of the sum', () => {
    const { price: _, ...free } = sheet
    expect(totalOf([purchaseOfSheets('a', sheet, 16), purchaseOfSheets('b', free, 16)]).valueOf()).toBe(12)
  })
})
