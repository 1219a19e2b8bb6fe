import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { standardFits } from '../../src/card/envelopes/fits.ts'
import { fullName, standardEnvelopes } from '../../src/card/envelopes/standard.ts'
import { fitInside } from '../../src/length/grid.ts'
import { inches, type Length, mm, numberIn, part, type Size, toMm, zero } from '../../src/length/length.ts'
import { sheetSize } from '../../src/length/paper.ts'
import data from '../data/envelopes.json' with { type: 'json' }
import { cardOf, measure } from './block.ts'

/** Figures and cases stand in the data file, with their sources. */
const unitOf = (unit: string) => (n: number) => (unit === 'in' ? inches(n) : mm(n))
const sized = ([width, height]: readonly number[], unit: string): Size => {
  const length = unitOf(unit)
  return { width: length(width ?? 0), height: length(height ?? 0) }
}
const numbers = (...lengths: readonly (Length | undefined)[]) => lengths.map((x) => x && toMm(x))

/** The data file tells envelopes from sheets of the same name, and says what else a name is called. */
const named = (id: string, standard: string) => {
  const name = id.replace(/ envelope$| \(Slimline\)$/, '')
  return standardEnvelopes.find(
    (e) => e.name === name && (e.series === 'ISO 269') === (standard === 'ISO 269'),
  )
}
const byId = new Map(data.envelopes.map((e) => [e.id, named(e.id, e.standard)]))

test.each(data.envelopes)(
  '$id ($standard) has its published size, and the published insert if there is one',
  (e) => {
    const found = named(e.id, e.standard)
    const { width, height } = sized([e.w, e.h], e.unit)
    expect(numbers(found?.size.width, found?.size.height)).toEqual(numbers(width, height))
    if (e.inside_w === undefined) return
    const inside = sized([e.inside_w, e.inside_h], e.unit)
    expect(numbers(found?.holds.width, found?.holds.height)).toEqual(numbers(inside.width, inside.height))
  },
)

test('every envelope of the program is in the data, and none of them is remembered only', () => {
  expect(standardEnvelopes.filter((e) => ![...byId.values()].includes(e)).map(fullName)).toEqual([])
})

// What ISO says each is for, from the data: sheets, folded sheets, and envelopes one size down.
test.each([
  ['C3', 'A3', [1, 1]],
  ['C4', 'A4', [1, 1]],
  ['C5', 'A5', [1, 1]],
  ['C6', 'A6', [1, 1]],
  ['C7', 'A7', [1, 1]],
  ['DL', 'A4', [1, 3]],
  ['C6/C5', 'A4', [1, 3]],
  ['C7/C6', 'A5', [1, 3]],
  ['B6', 'C6', [1, 1]],
  ['B5', 'C5', [1, 1]],
  ['B4', 'C4', [1, 1]],
] as const)('%s takes what it is for: %s', (name, sheet, [, folds]) => {
  const { width, height } = sheetSize(sheet) ?? { width: zero, height: zero }
  const insert = folds === 1 ? { width, height } : { width, height: part(height, folds) }
  const fits = standardFits(insert, zero).map(({ envelope }) => fullName(envelope))
  expect(fits).toContain(`${name} (ISO 269)`)
})

const cases = (kind: string) => data.cases.filter((one) => one.kind.startsWith(kind))

test.each(cases('flat card in envelope'))('$id', ({ card = [], unit = '', envelope, expect: expected }) => {
  const wanted = byId.get(envelope ?? '')
  expect(wanted).toBeDefined()
  for (const turned of [card, [...card].reverse()])
    expect(standardFits(sized(turned, unit), zero).some((fit) => fit.envelope === wanted)).toBe(expected)
})

test.each(cases('outside size less card'))('$id', ({ card = [], unit = '', envelope, expect_slack }) => {
  const fit = standardFits(sized(card, unit), zero).find((one) => one.envelope === byId.get(envelope ?? ''))
  expect(numbers(fit?.room.width, fit?.room.height)).toEqual(expect_slack)
})

test.each(cases('cut across'))('$id', ({ sheet = [], gives, expect_exact_half, nominal, remainder_mm }) => {
  const [w = 0, h = 0] = sheet
  const half = part(mm(h), 2)
  expect([w, half.valueOf()]).toEqual(expect_exact_half)
  const smaller = sheetSize(gives ?? '')
  expect(numbers(smaller?.height, smaller?.width)).toEqual(nominal)
  expect(numbers(fitInside(half, mm(1)), smaller?.width)).toEqual([nominal?.[1], nominal?.[1]])
  expect(toMm(mm(h).sub(smaller?.width.mul(2) ?? 0) as Length)).toBe(remainder_mm)
})

// A PDF point is 1/72 in.
test.each([...cases('mm to')])('$id', ({ mm: sides = [], expect_pt, expect_in }) => {
  for (const [i, side] of sides.entries()) {
    if (expect_in) expect(Number(numberIn(mm(side), 'in').toFixed(4))).toBe(expect_in[i])
    if (expect_pt) expect(Number((numberIn(mm(side), 'in') * 72).toFixed(3))).toBe(expect_pt[i])
  }
})

test('all cases of the data are one of these kinds', () => {
  const kinds = ['flat card in envelope', 'outside size less card', 'cut across', 'mm to']
  expect(kinds.flatMap(cases)).toHaveLength(data.cases.length)
})

describe('thickness', () => {
  const fits = (closed: Size, thick: Length) =>
    standardFits(closed, thick).map(({ envelope }) => fullName(envelope))
  const [a6, fiveBySeven] = [sized([105, 148], 'mm'), sized([5, 7], 'in')]

  // C6 leaves an A6 card 9 mm and 14 mm; half of 9 is for the thickness. A7 leaves 5 × 7 1/4 in both ways.
  test('takes up to half the room that an envelope leaves', () => {
    expect(fits(a6, mm(new Fraction(9, 2)))[0]).toBe('C6 (ISO 269)')
    expect(fits(a6, mm(new Fraction(91, 20)))).not.toContain('C6 (ISO 269)')
    expect(fits(fiveBySeven, inches(1, 8))).toContain('A7 (US trade)')
    expect(fits(fiveBySeven, inches(9, 64))).not.toContain('A7 (US trade)')
  })

  test('a box goes into no envelope', () => {
    expect(fits(sized([4, 4], 'in'), inches(4))).toEqual([])
    const box = cardOf('fold: side\nclosed: 4 x 4 in', { thickness: () => inches(4) })
    expect(measure(box, 'card.fits')).toBe('no standard envelope')
  })
})

describe('what a lesson says', () => {
  const said = (closed: string) => measure(cardOf(`fold: side\nclosed: ${closed}`), 'card.fits')
  test.each([
    ['A6', 'C6 (ISO 269) or A6 (US trade)'],
    ['7 x 5 in', 'C5 (ISO 269) or A7 (US trade)'],
    // 9 in is 228.6 mm, and C5 is 229 mm long.
    ['4 x 9 in', 'B5 (ISO 269) or #10 (US trade)'],
    // Lists disagree: 4 1/8 or 4 1/4 in go into an A2.
    ['4 1/4 x 5 1/2 in', 'B6 (ISO 269), A2 (US trade; tight) or A6 (US trade)'],
    ['4 1/8 x 5 1/2 in', 'C6 (ISO 269) or A2 (US trade)'],
    ['20 x 12 in', 'no standard envelope'],
  ])('%s goes into %s', (closed, expected) => expect(said(closed)).toBe(expected))
})
