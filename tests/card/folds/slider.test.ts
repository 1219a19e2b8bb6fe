import { expect, test } from 'vitest'
import { cardOf, check, measure } from '../block.ts'
import { laidIn, placeOn, pulled, shut } from './pulled.ts'

const block = `fold: slider
closed: 150 x 100 mm
slot: 90 mm
slot height: 8 mm
bottom: 40 mm
pad: 14 mm
mover: 40 mm
strip: 24 mm
notch: 10 mm
glue: 9 mm
gap: 2 mm`
const card = cardOf(block, { unit: 'mm' })

test('the strip reaches from the free edge to the end of the slot, the channel from the notch to the pad pulled out', () => {
  expect(measure(card, 'strip.size')).toBe('120 × 24 mm')
  expect(measure(card, 'pad.size')).toBe('14 × 6 mm')
  // From 10 to 30 + 14; 24 + 2 × 2 + 2 × 9 high.
  expect(measure(card, 'channel.size')).toBe('34 × 46 mm')
})

test('the front has a slot and a notch', () => {
  const [base] = card.structure.pieces
  const lines = base?.cuts.map(({ from, to }) => [from.x, from.y, to.x, to.y].map(Number))
  expect(lines).toContainEqual([30, 40, 120, 40])
  expect(lines).toContainEqual([10, 56, 10, 32])
})

test('shut, nothing sticks out; the moving piece is at the spine', () => {
  const closed = shut(card.structure)
  expect([closed.size.width, closed.size.height].map(Number)).toEqual([150, 100])
  // The front is seen from outside: its free edge is on the right. The pad is at 30 .. 44 from the spine.
  expect(placeOn(closed, 'pad', 'front')).toEqual([30, 41, 44, 47])
  expect(placeOn(closed, 'mover', 'front')).toEqual([17, 24, 57, 64])
  expect(placeOn(closed, 'strip', 'front')).toEqual([30, 32, 150, 56])
})

test('pulled out, everything has moved by the slot less the pad, and the moving piece is still on the card', () => {
  const closed = shut(pulled(card.structure))
  expect(placeOn(closed, 'pad', 'front')).toEqual([106, 41, 120, 47])
  expect(placeOn(closed, 'mover', 'front')).toEqual([93, 24, 133, 64])
  expect(Number(laidIn(closed, 'strip').left.add(120))).toBe(150 + 76)
  // Still in the channel.
  expect(placeOn(closed, 'strip', 'channel')[0]).toBeLessThanOrEqual(0)
})

test('a moving piece that would leave the card is refused with the side that stays on it', () => {
  const { findings } = check(block.replace('mover: 40', 'mover: 76'), { unit: 'mm' })
  // Margin 30 and half of the pad on either side: 2 × 30 + 14.
  expect(findings.map(({ suggestion }) => suggestion)).toEqual([
    'Make it more than 14 mm and at most 74 mm, or the slot shorter',
  ])
})
