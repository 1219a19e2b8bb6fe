import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { caliperOf, printedCaliper, usualBulk } from '../../src/card/caliper.ts'
import { gramsPerSquareMetre } from '../../src/card/weight.ts'
import { numberIn, toMm } from '../../src/length/length.ts'
import data from '../data/paper-weight.json' with { type: 'json' }
import { cardOf, check } from './block.ts'

/** Sources stand in the data file: exact conversion over the basis sizes, and what makers print. */
describe('weights', () => {
  test.each(data.weights)('$id ($source)', ({ lb, grade, expect_gsm, tolerance }) => {
    for (const name of grade.replace(/\(.*\)/, '').split(/\s*\/\s*/)) {
      const gsm = gramsPerSquareMetre(`${lb} lb ${name.trim()}`).valueOf()
      expect(Math.abs(gsm - expect_gsm), name).toBeLessThan(tolerance)
    }
  })
})

describe('calipers', () => {
  test.each(data.thickness)('$id (ISO 534)', ({ gsm, bulk_cm3_per_g, expect_mm }) => {
    expect(caliperOf(new Fraction(gsm), new Fraction(bulk_cm3_per_g)).valueOf()).toBeCloseTo(expect_mm, 9)
    const written = `fold: side\nclosed: A6\nbase: {weight: ${gsm} gsm, bulk: ${bulk_cm3_per_g}}`
    expect(toMm(baseOf(written).caliper)).toBeCloseTo(expect_mm, 9)
  })

  test.each(data.points)('$id', ({ pt, expect_mm }) => {
    expect(toMm(baseOf(`fold: side\nclosed: A6\nbase: {caliper: ${pt} pt}`).caliper)).toBeCloseTo(
      expect_mm,
      9,
    )
  })

  test('a sheet has the caliper that its own group gives, and else the one given for its name', () => {
    const { pieces } = cardOf(
      'fold: side\nclosed: A6\nbase: {weight: 300 gsm}\nlayers:\n  a: {on: front, border: 1 in, stock: card, caliper: 1 mm}\n  b: {on: back, border: 1 in, stock: card}',
    ).structure
    expect(pieces.map(({ name, stock }) => [name, toMm(stock.caliper)])).toEqual([
      ['base', 0.375],
      ['a', 1],
      ['b', 1],
    ])
  })

  test('of card by its weight alone lie where card of that weight lies', () => {
    for (const { gsm, mm } of data.card) {
      const caliper = toMm(caliperOf(new Fraction(gsm), usualBulk))
      expect(caliper).toBeGreaterThanOrEqual(mm[0] ?? Number.NaN)
      expect(caliper).toBeLessThanOrEqual(mm[1] ?? Number.NaN)
    }
  })

  test('of film: as printed, and where none is given a thickness that is made and used for windows', () => {
    const [pet, window, gauge] = data.film
    for (const um of pet?.um ?? [])
      expect(toMm(printedCaliper(`${um} µm`) ?? ({} as never))).toBeCloseTo(um / 1000, 12)
    expect(printedCaliper(`${gauge?.gauge} gauge`)?.valueOf()).toBeCloseTo(gauge?.expect_mm ?? Number.NaN, 12)
    const usual = toMm(baseOf('fold: side\nclosed: A6\nbase: {stock: clear acetate}').caliper) * 1000
    expect(pet?.um).toContain(usual)
    expect(usual).toBeGreaterThanOrEqual(window?.um?.[0] ?? Number.NaN)
    expect(usual).toBeLessThanOrEqual(window?.um?.[1] ?? Number.NaN)
  })

  test.each([
    ['caliper: 3 furlongs', 'expression'],
    ['caliper: -1 mm', 'value'],
    ['caliper: 20 mm', 'value'],
    ['bulk: thick', 'value'],
    ['bulk: 12', 'value'],
  ])('%s is told', (words, rule) => {
    const { card, findings } = check(`fold: side\nclosed: A6\nbase: {${words}}`)
    expect([card, findings[0]?.rule, findings[0]?.place?.line]).toEqual([undefined, rule, 3])
  })
})

describe('foam', () => {
  const heightOf = (raise: string) => {
    const card = cardOf(
      `fold: side\nclosed: A6\nlayers:\n  mat: {on: front, border: 1/8 in, raise: ${raise}}`,
    )
    return card.structure.bonds[0]?.height ?? ({} as never)
  }

  test('a height is what it is, off the ruler', () => {
    expect(toMm(heightOf('1.3 mm'))).toBe(1.3)
  })

  test('the words for foam tape are the thicknesses that it is made in', () => {
    const words = ['thin foam tape', 'foam tape', 'thick foam tape']
    expect(words.map((word) => toMm(heightOf(word)))).toEqual(data.foam[0]?.mm)
    expect(words.map((word) => numberIn(heightOf(word), 'in'))).toEqual([1 / 32, 1 / 16, 1 / 8])
  })

  test.each(['-1 mm', '2 in'])('a raise of %s is told', (raise) => {
    const { findings } = check(
      `fold: side\nclosed: A6\nlayers:\n  mat: {on: front, border: 1/8 in, raise: ${raise}}`,
    )
    expect(findings.map((f) => [f.rule, f.place?.line, f.place?.column])).toEqual([['value', 4, 43]])
  })
})

const baseOf = (text: string) => {
  const base = cardOf(text).structure.pieces.find((piece) => piece.name === 'base')
  if (!base) throw new Error('a card without a base')
  return base.stock
}
