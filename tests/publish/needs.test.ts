import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { areaOf } from '../../src/length/area.ts'
import { usualGrid } from '../../src/length/grid.ts'
import { inches } from '../../src/length/length.ts'
import { needsView } from '../../src/publish/needs.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { supply } from '../workshop/lesson-with.ts'

test('what one card uses up is told as a reader measures, weighs, counts or shares it', () => {
  const supplies = {
    each: [
      supply('glue sheet', { kind: 'area', area: areaOf({ width: inches(17, 2), height: inches(5) }) }),
      supply('pva glue', { kind: 'dose', dose: { unit: 'g', amount: new Fraction(5, 2) } }),
      supply('ink', { kind: 'count', count: 1, of: 'drops' }),
    ],
    shared: [
      supply('glue pot', { kind: 'per table', count: 2 }),
      supply('ruler', { kind: 'per', count: 1, people: 3 }),
    ],
    tutor: [],
  }
  const said = (unit: 'in' | 'mm', lang = 'en') =>
    needsView([], supplies, wordingOf(lang, unit), usualGrid[unit]).flatMap(({ items }) =>
      items.map(({ item, amount }) => [
        item,
        (amount?.html ?? '').replace(/<[^>]*>/g, '').replace(/[\u00a0\u202f]/g, ' '),
      ]),
    )
  expect(said('in')).toEqual([
    ['glue sheet', '42.5 sq in'],
    ['pva glue', '2.5 g'],
    ['ink', '1 drop'],
    ['glue pot', '2 for each table'],
    ['ruler', '1 between 3'],
  ])
  // 42.5 × 6.4516 = 274.193.
  expect(said('mm')[0]).toEqual(['glue sheet', '274.2 cm²'])
  expect(said('mm', 'de')).toEqual([
    ['glue sheet', '274,2 cm²'],
    ['pva glue', '2,5 g'],
    ['ink', '1 Tropfen'],
    ['glue pot', '2 je Tisch'],
    ['ruler', '1 für je 3'],
  ])
})

test('a plain number stays with what it counts, a longer amount may go on the next line', () => {
  const supplies = {
    each: [supply('half pearls', { kind: 'count', count: 12 })],
    shared: [supply('ruler', { kind: 'per', count: 1, people: 3 })],
    tutor: [],
  }
  const groups = needsView([], supplies, wordingOf('en', 'mm'), usualGrid.mm)
  expect(groups.flatMap(({ items }) => items.map(({ brief }) => brief))).toEqual([true, false])
})
