import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { type Purchase, totalOf } from '../../../src/workshop/class/buying.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { shopFindings, shoppingGroups } from '../../../src/workshop/class/shopping.ts'

const line = (item: string, cents: number): Purchase => ({
  item,
  need: { kind: 'count', count: 1 },
  have: { kind: 'count', count: 0 },
  count: 1,
  cost: new Fraction(cents, 100),
})
const buy = [
  line('white card', 800),
  line('vellum', 150),
  line('vellum', 60),
  line('tape', 220),
  line('dots', 180),
]

const shopOf = (shop: string) => {
  const { file, findings } = readClass(`lesson: a.md\npeople: 1\nshop: ${shop}`)
  return { shop: file.shop, findings }
}

test('what is bought stands under the part of the shop that names it, in its order, and the rest comes last', () => {
  const { shop, findings } = shopOf('{glue: [tape], paper: [vellum, white card], ribbons: []}')
  expect(findings).toEqual([])
  const groups = shoppingGroups(buy, shop)
  expect(
    groups.map(({ name, lines, total }) => [name, lines.map(({ item }) => item), total.valueOf()]),
  ).toEqual([
    ['glue', ['tape'], 2.2],
    ['paper', ['white card', 'vellum', 'vellum'], 10.1],
    ['the rest', ['dots'], 1.8],
  ])
  expect(totalOf(groups.flatMap(({ lines }) => lines)).equals(totalOf(buy))).toBe(true)
})

test('without parts there is one list', () => {
  expect(shoppingGroups(buy, [])).toEqual([{ lines: buy, total: totalOf(buy) }])
})

test('a part may be called the rest itself; nothing is lost or bought twice', () => {
  const { shop } = shopOf('{the rest: tape, paper: [vellum, tape]}')
  const lines = shoppingGroups(buy, shop).flatMap((group) => group.lines)
  expect(lines.toSorted((a, b) => a.item.localeCompare(b.item))).toEqual(
    buy.toSorted((a, b) => a.item.localeCompare(b.item)),
  )
})

test('a name that is bought nowhere, or stands twice, is a hint at its place', () => {
  const { shop } = shopOf('{paper: [velum, ribbon, tape], glue: [tape]}')
  expect(shopFindings(shop, buy).map((f) => [f.severity, f.place?.column, f.message, f.suggestion])).toEqual([
    ['hint', 16, 'Nothing of `velum` is needed for this class', 'Write `vellum`'],
    [
      'hint',
      23,
      'Nothing of `ribbon` is needed for this class',
      'Take it out, or leave it for another class',
    ],
    ['hint', 45, '`tape` stands in `paper` already', 'Take it out of one of them'],
  ])
})

test('what is no shop is told', () => {
  const { findings } = shopOf('[tape]')
  expect(findings.map((f) => [f.message, f.suggestion])).toEqual([
    [
      '`shop` wants its parts and what stands there, but there is a list here',
      'Write for example `shop: {paper aisle: [white card, vellum], glue and tape: [double-sided tape]}`',
    ],
  ])
})
