import { expect, test } from 'vitest'
import { foldCard } from '../../../src/fold/prove.ts'
import { cardOf, measure } from '../block.ts'

test('twice the width and the thickness, and the overlap', () => {
  const card = cardOf('fold: belly band\nclosed: 5 x 2 in\naround: 1/8 in')
  // 2 × (5 + 1/8) + 1.
  expect(measure(card, 'base.size')).toBe('11 1/4 × 2 in')
  expect(measure(card, 'base.scores')).toBe('5, 5 1/8, 10 1/8 and 10 1/4 in')
})

test('a thickness that no ruler shows goes up to a mark, so that the band goes on', () => {
  const card = cardOf('fold: belly band\nclosed: 120 x 40 mm\naround: 0.9 mm\noverlap: 25 mm', { unit: 'mm' })
  expect(measure(card, 'base.size')).toBe('267 × 40 mm')
})

test('it stands round the card', () => {
  const { structure } = cardOf('fold: belly band\nclosed: 120 x 40 mm\naround: 3 mm', { unit: 'mm' })
  const { closed, standing, findings } = foldCard(structure)
  expect(findings).toEqual([])
  expect([closed?.size.width, closed?.size.height].map(Number)).toEqual([120, 40])
  expect([standing?.width, standing?.height, standing?.depth].map((x) => Math.round((x ?? 0) * 1e6))).toEqual(
    [120e6, 40e6, 3e6],
  )
})
