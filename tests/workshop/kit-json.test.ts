import { expect, test } from 'vitest'
import { makeKit } from '../../src/workshop/kit.ts'
import { kitJson } from '../../src/workshop/kit-json.ts'
import { kitShape } from './contract.ts'
import { harbour } from './harbour.ts'
import { bridgeBlock, lessonWith } from './lesson-with.ts'

const json = kitJson(makeKit(harbour(), 14, 2))

test('the answer has the promised shape, and no price that nobody gave', () => {
  expect(kitShape.parse(JSON.parse(JSON.stringify(json)))).toEqual(json)
  expect(json.buy.flatMap((b) => Object.keys(b))).not.toContain('cost')
})

test('two cards keep their names in the answer', () => {
  const kit = kitJson(makeKit(lessonWith({ card: bridgeBlock, box: bridgeBlock }), 2, 0))
  expect(kitShape.parse(kit).each.map((e) => e.card)).toContain('box')
})

test('lengths are exact in both units, and text in the unit of the lesson', () => {
  expect(json.each[0]).toEqual({
    item: 'base',
    kind: 'piece',
    count: 1,
    size: { width: { mm: 215.9, in: 8.5, text: '8 1/2 in' }, height: { mm: 127, in: 5, text: '5 in' } },
    stock: 'dark blue card',
  })
  expect(json.buy[1]).toEqual({ item: 'double-sided tape', need: { mm: 15544.8, in: 612, text: '612 in' } })
  const inMm = kitJson(makeKit(harbour('mm'), 14, 2))
  expect(inMm.buy[1]).toEqual({
    item: 'double-sided tape',
    need: { mm: 15544.8, in: 612, text: '15544.8 mm' },
  })
})

test('a shared item tells its number and its rule', () => {
  expect(json.shared.slice(0, 2)).toEqual([
    { item: 'scoring board', count: 5, rule: '1 per 3' },
    { item: 'craft knife', count: 7, rule: '1 per 2' },
  ])
})
