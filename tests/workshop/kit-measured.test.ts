import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { areaOf } from '../../src/length/area.ts'
import { inches } from '../../src/length/length.ts'
import { makeKit } from '../../src/workshop/kit.ts'
import { kitJson } from '../../src/workshop/kit-json.ts'
import { kitListing } from '../../src/workshop/kit-listing.ts'
import { kitShape } from './contract.ts'
import { bridgeBlock, lessonWith, supply } from './lesson-with.ts'

const glue = { kind: 'area', area: areaOf({ width: inches(8), height: inches(5) }) } as const
const grams = { kind: 'dose', dose: { unit: 'g', amount: new Fraction(5) } } as const
const poured = { kind: 'dose', dose: { unit: 'ml', amount: new Fraction(2) } } as const
const drops = { kind: 'count', count: 3, of: 'drops' } as const

const kit = makeKit(
  lessonWith(
    { card: bridgeBlock },
    {
      each: [supply('glue sheet', glue), supply('pva glue', grams), supply('ink', drops)],
      shared: [supply('glue pot', { kind: 'per table', count: 1 }), supply('spray', poured)],
      tutor: [
        supply('glue sheet', glue),
        supply('pva glue', grams),
        supply('pva glue', poured),
        supply('ink', drops),
      ],
    },
  ),
  14,
  2,
)

// 16 kits and the tutor: 17 × 40 = 680 sq in, 17 × 5 = 85 g, 17 × 3 = 51 drops; millilitres are not added to grams.
test('areas, grams and drops of 16 kits and the tutor add up, like to like', () => {
  const ready = kitListing(kit).sections.find(({ heading }) => heading === 'To have ready')
  expect(ready?.rows.map((row) => row.slice(0, 2))).toEqual([
    ['glue sheet', '680 sq in'],
    ['pva glue', '85 g'],
    ['ink', '51 drops'],
    ['spray', '2 ml'],
    ['pva glue', '2 ml'],
  ])
})

test('--json tells them with their units', () => {
  const json = kitShape.parse(kitJson(kit))
  expect(json.buy.map(({ need }) => need)).toEqual([
    { cm2: 4387.088, sqIn: 680, text: '680 sq in' },
    { g: 85 },
    51,
    { ml: 2 },
    { ml: 2 },
  ])
  expect(json.each).toContainEqual({ item: 'ink', kind: 'count', count: 3, of: 'drops' })
  expect(json.shared[0]).toEqual({ item: 'glue pot', text: '1 per table' })
})
