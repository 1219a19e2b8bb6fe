import { expect, test } from 'vitest'
import { foldCard } from '../../../src/fold/prove.ts'
import { cardOf, measure } from '../block.ts'

const block = `fold: match box
closed: 80 x 120 mm
depth: 25 mm
gap: 2 mm
tab: 12 mm
base: {stock: white card, caliper: 0.4 mm}`

test('the sleeve goes round the box; the tray is smaller by twice the caliper and the gap', () => {
  const card = cardOf(block, { unit: 'mm' })
  // 2 × (80 + 25) + 12.
  expect(measure(card, 'base.size')).toBe('222 × 120 mm')
  expect(measure(card, 'base.scores')).toBe('80, 105, 185 and 210 mm')
  // 80 - 0.8 - 2 = 77.2, down to 77; walls 25 - 2.8 = 22.2, down to 22.
  expect(measure(card, 'floor.size')).toBe('77 × 120 mm')
  expect(measure(card, 'tray.size')).toBe('121 × 164 mm')
})

test('opened at the side, sleeve and tray lie the other way', () => {
  const card = cardOf(`${block}\nopens: side`, { unit: 'mm' })
  expect(measure(card, 'base.size')).toBe('80 × 302 mm')
  expect(measure(card, 'base.scores')).toBe('120, 145, 265 and 290 mm')
  expect(measure(card, 'floor.size')).toBe('80 × 117 mm')
})

test.each(['top', 'side'])('opened at the %s, sleeve and tray close to a box of that size', (opens) => {
  const card = cardOf(`${block}\nopens: ${opens}`, { unit: 'mm' })
  const { closed, standing, findings } = foldCard(card.structure)
  expect(findings).toEqual([])
  expect([closed?.size.width, closed?.size.height].map(Number)).toEqual([80, 120])
  expect(standing?.width).toBeCloseTo(80, 6)
  expect(standing?.depth).toBeCloseTo(120, 6)
  expect(standing?.height).toBeCloseTo(25, 6)
})

test('the tray lies inside the sleeve, and can be pulled out by its length', () => {
  const { structure } = cardOf(block, { unit: 'mm' })
  const { closed } = foldCard(structure)
  const floor = closed?.plates.find(({ plate }) => plate === 'floor')
  // 3 mm are left of the 80: half of them on either side.
  expect([floor?.left, floor?.bottom, floor?.size.width].map(Number)).toEqual([1.5, 0, 77])
  const slides = structure.bonds.flatMap(({ plate, slide }) => (slide ? [[plate, Number(slide.y)]] : []))
  expect(slides).toEqual([['floor', 120]])
})

test('a tray whose walls lean does not close: its tabs miss the end walls', () => {
  const { structure } = cardOf(block, { unit: 'mm' })
  const leaning = (structure.shut ?? []).map((bend) =>
    bend.hinge.includes('left wall') && bend.hinge.includes('floor') ? { ...bend, degrees: 80 } : bend,
  )
  expect(foldCard({ ...structure, shut: leaning }).findings).not.toEqual([])
})
