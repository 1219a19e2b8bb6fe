import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { inches, mm, zero } from '../../../src/length/length.ts'
import { purchaseOf, purchaseOfSheets, totalOf } from '../../../src/workshop/class/buying.ts'

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

describe('sheets', () => {
  const sheet = {
    size: { width: inches(12), height: inches(12) },
    place,
    have: 4,
    pack: 10,
    trim: zero,
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
