import { describe, expect, test } from 'vitest'
import type { Structure } from '../../../src/card/structure.ts'
import { foldCard } from '../../../src/fold/prove.ts'
import { cardOf, measure } from '../block.ts'
import { placeOn, shut } from './pulled.ts'

const { structure } = cardOf('fold: endless\nclosed: 6 x 6 in')

/** The card with the creases of its upright and of its level pieces bent by so much. */
const bent = (upright: 0 | 180, level: 0 | 180): Structure => ({
  ...structure,
  shut: structure.hinges.map(({ between }) => ({
    hinge: between,
    degrees: /^(left|right) (top|middle|bottom)$/.test(between[0]) ? upright : level,
  })),
})

test('four 6 × 3 pieces scored at 1 1/2 and 4 1/2: common practice, no source', () => {
  const card = cardOf('fold: endless\nclosed: 6 x 6 in')
  expect(['base.count', 'base.size', 'base.scores'].map((part) => measure(card, part))).toEqual([
    '4',
    '6 × 3 in',
    '1 1/2 and 4 1/2 in',
  ])
})

test.each([
  ['first', 0, 0],
  ['second', 0, 180],
  ['fourth', 180, 0],
] as const)('the %s face is the whole square', (_, upright, level) => {
  expect(foldCard(bent(upright, level)).findings).toEqual([])
  const { size } = shut(bent(upright, level))
  expect([size.width, size.height].map((x) => Number(x.div(25.4)))).toEqual([6, 6])
  expect(covered(bent(upright, level))).toEqual(['....', '....', '....', '....'])
})

test('the third one is a cross', () => {
  expect(foldCard(bent(180, 180)).findings).toEqual([])
  expect(covered(bent(180, 180))).toEqual([' .. ', '....', '....', ' .. '])
})

test('what lies in front opens like two doors, and shows what lay behind', () => {
  const [one, two] = [shut(bent(0, 0)), shut(bent(0, 180))]
  expect(one.order.indexOf('left middle')).toBeLessThan(one.order.indexOf('upper middle'))
  expect(two.order.indexOf('left middle')).toBeGreaterThan(two.order.indexOf('upper middle'))
  const leftOf = (closed: typeof one) => placeOn(closed, 'left middle', 'upper middle').slice(0, 3)
  // Turned over about the crease at 1 1/2 in, it covers the same half.
  expect(leftOf(two)).toEqual(leftOf(one))
})

/** Which cells of the 4 × 4 are covered, from the top row down. */
function covered(card: Structure): string[] {
  const { plates, size } = shut(card)
  const cell = Number(size.width) / 4
  return [3, 2, 1, 0].map((row) =>
    [0, 1, 2, 3]
      .map((column) => {
        const [x, y] = [(column + 0.5) * cell, (row + 0.5) * cell]
        const over = plates.some((p) => {
          const [left, bottom] = [Number(p.left), Number(p.bottom)]
          const inside = x > left && x < left + Number(p.size.width)
          return inside && y > bottom && y < bottom + Number(p.size.height)
        })
        return over ? '.' : ' '
      })
      .join(''),
  )
}

describe('a side that has no quarter on the ruler', () => {
  test.each([
    ['125 x 125 mm', '125 × 62 mm', '31 and 94 mm'],
    ['126 x 126 mm', '126 × 62 mm', '31 and 95 mm'],
    ['127 x 127 mm', '127 × 62 mm', '31 and 96 mm'],
    ['128 x 128 mm', '128 × 64 mm', '32 and 96 mm'],
  ])('%s: pieces of %s, scored at %s, that turn over within the square', (closed, size, scores) => {
    const card = cardOf(`fold: endless\nclosed: ${closed}`, { unit: 'mm' })
    expect([measure(card, 'base.size'), measure(card, 'base.scores')]).toEqual([size, scores])
    const second = {
      ...card.structure,
      shut: card.structure.hinges.map(({ between }) => ({
        hinge: between,
        degrees: /^(upper|lower)/.test(between[0]) ? 180 : 0,
      })),
    }
    expect(foldCard(second).findings).toEqual([])
    for (const part of ['width', 'height'] as const)
      expect(shut(second).size[part].lte(card.closed[part])).toBe(true)
  })
})
