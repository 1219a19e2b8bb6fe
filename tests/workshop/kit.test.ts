import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inches, times } from '../../src/length/length.ts'
import { makeKit } from '../../src/workshop/kit.ts'
import { ruleNotation } from '../../src/workshop/kit-rule.ts'
import { harbour } from './harbour.ts'
import { bridgeBlock, lessonWith, supply } from './lesson-with.ts'

// Worked by hand, no source. The bridge card, 7 × 5 in with 3/4 in legs and tabs:
// floor 7 - 3/4 - 3/4 = 5 1/2, base 5 1/2 + 4 · 3/4 = 8 1/2 in wide.
describe('a hand-worked class of 14 people and 2 spare kits', () => {
  const kit = makeKit(harbour(), 14, 2)

  test('every piece of the card goes into each kit, the envelope sheet and the letters too', () => {
    const list = kit.each.map((e) => (e.kind === 'supply' ? e.item : `${e.count} ${e.item}`))
    expect(list).toEqual([
      '1 base',
      '2 side strip',
      '1 backdrop',
      '1 sea wall',
      '1 envelope',
      '7 name',
      'pearl dots',
      'double-sided tape',
      'glue',
    ])
    expect(kit.each.find((e) => e.item === 'base')).toMatchObject({
      size: { width: inches(17, 2), height: inches(5) },
    })
  })

  test('14 people by threes are 5 groups, by twos 7; spare kits need no board, and 2 per 3 is 10', () => {
    expect(kit.shared.map(({ item, amount, rule }) => [item, amount, rule && ruleNotation(rule)])).toEqual([
      ['scoring board', { kind: 'count', count: 5 }, '1 per 3'],
      ['craft knife', { kind: 'count', count: 7 }, '1 per 2'],
      ['pencil', { kind: 'count', count: 10 }, '2 per 3'],
      ['kettle', { kind: 'count', count: 1 }, undefined],
      ['masking tape', { kind: 'length', length: inches(40) }, undefined],
    ])
  })

  test('pieces of 16 kits by stock: 16 · 2 side strips and 16 backdrops of patterned paper', () => {
    const totals = kit.stocks.map(({ stock, pieces }) => [stock, pieces.map((p) => `${p.count} ${p.item}`)])
    expect(totals).toEqual([
      ['dark blue card', ['16 base']],
      ['patterned paper', ['32 side strip', '16 backdrop']],
      ['grey card', ['16 sea wall']],
      ['envelope paper', ['16 envelope']],
    ])
  })

  test('5 · 16 + 10 dots; 16 · 34 + 68 = 612 in of tape; the masking tape is used up too, tools are not', () => {
    expect(kit.buy).toEqual([
      { item: 'pearl dots', need: { kind: 'count', count: 90 } },
      { item: 'double-sided tape', need: { kind: 'length', length: inches(612) } },
      { item: 'glue', need: { kind: 'text', text: 'a little' } },
      { item: 'masking tape', need: { kind: 'length', length: inches(40) } },
    ])
  })
})

test('two cards of one lesson are told apart by name', () => {
  const box = 'fold: side\nclosed: 4 x 4 in\nbase: {stock: white card}'
  const { each } = makeKit(lessonWith({ card: bridgeBlock, box }), 1, 0)
  expect(each.filter((e) => e.item === 'base').map((e) => 'card' in e && e.card)).toEqual(['card', 'box'])
})

test('an item that is counted here and measured there stays two needs', () => {
  const each = [supply('ribbon', { kind: 'count', count: 1 })]
  const tutor = [supply('ribbon', { kind: 'length', length: inches(12) })]
  const { buy } = makeKit(lessonWith({}, { each, tutor }), 2, 0)
  expect(buy.map(({ need }) => need.kind)).toEqual(['count', 'length'])
})

test.each([
  [0, 0, 'people'],
  [1.5, 0, 'people'],
  [3, -1, 'spare kits'],
  [Number.NaN, 0, 'people'],
])('%d people and %d spare kits are refused', (people, spare, what) => {
  expect(() => makeKit(lessonWith({}), people, spare)).toThrow(`Unexpected number of ${what}`)
})

test('whatever the class, lengths add up exactly and every group gets its share', () => {
  const whole = (min: number, max: number) => fc.integer({ min, max })
  fc.assert(
    fc.property(whole(1, 60), whole(0, 9), whole(1, 9), whole(1, 64), (people, spare, size, sixteenths) => {
      const length = inches(sixteenths, 16)
      const { shared, buy } = makeKit(
        lessonWith(
          {},
          {
            each: [supply('tape', { kind: 'length', length })],
            shared: [supply('board', { kind: 'per', count: 1, people: size })],
          },
        ),
        people,
        spare,
      )
      expect(buy[0]?.need).toEqual({ kind: 'length', length: times(length, people + spare) })
      const boards = shared[0]?.amount.kind === 'count' ? shared[0].amount.count : 0
      expect(boards * size).toBeGreaterThanOrEqual(people)
      expect((boards - 1) * size).toBeLessThan(people)
    }),
  )
})
