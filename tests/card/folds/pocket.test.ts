import { expect, test } from 'vitest'
import { cardOf, measure } from '../block.ts'
import { placeOn, pulled, shut } from './pulled.ts'

const card = cardOf('fold: pocket\nclosed: 100 x 150 mm\npocket: 60 mm\ntag: 140 mm\nseam: 4 mm\ngap: 2 mm', {
  unit: 'mm',
})

test('the sheet is as much higher as the pocket, which is cut free on the left', () => {
  expect(measure(card, 'base.size')).toBe('200 × 210 mm')
  expect(measure(card, 'base.scores')).toBe('60 and 100 mm')
  const lines = card.structure.pieces[0]?.cuts.map(({ from, to }) => [from.x, from.y, to.x, to.y].map(Number))
  expect(lines).toEqual([
    [0, 60, 102, 60],
    [102, 60, 102, 0],
  ])
})

test('the tag is as wide as the inside of the pocket less the gap on either side', () => {
  // 100 - 2 beside the spine - 2 × 4 - 2 × 2.
  expect(measure(card, 'tag.size')).toBe('86 × 140 mm')
})

test('shut, the tag stands in the pocket on the back, and nothing sticks out', () => {
  const closed = shut(card.structure)
  expect([closed.size.width, closed.size.height].map(Number)).toEqual([100, 150])
  expect(placeOn(closed, 'pocket', 'back')).toEqual([2, 0, 100, 60])
  expect(placeOn(closed, 'tag', 'back')).toEqual([8, 2, 94, 142])
  expect(closed.order).toEqual(['front', 'pocket', 'tag', 'back'])
})

test('it is as thick as four sheets', () => {
  const { caliper } = card.structure.pieces[0]?.stock ?? {}
  expect(Number(shut(card.structure).thickness)).toBeCloseTo(4 * Number(caliper), 9)
})

test('pulled out, the tag is free of the pocket', () => {
  const closed = shut(pulled(card.structure))
  expect(placeOn(closed, 'tag', 'back')[1]).toBe(placeOn(closed, 'pocket', 'back')[3])
})
