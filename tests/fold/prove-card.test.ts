import { expect, test } from 'vitest'
import { proveCard } from '../../src/fold/prove-card.ts'
import { usualGrid } from '../../src/length/grid.ts'

const prove = (text: string) =>
  proveCard(
    { name: 'card', text, place: { line: 10, column: 1, offset: 100 } },
    { unit: 'mm', grid: usualGrid.mm },
  )

test('closed-size: a card that shuts larger than the lesson says, with the size it has', () => {
  const { card, findings } = prove(
    'fold: free\nclosed: 40 x 60 mm\npanels: {a: 40 mm, b: 50 mm}\ncreases: [valley]',
  )
  expect(card).toBeDefined()
  expect(findings).toEqual([
    {
      rule: 'closed-size',
      severity: 'error',
      message: 'Shut, this card is 50 × 60 mm, but the lesson says 40 × 60 mm',
      suggestion: 'Write `closed: 50 x 60 mm`, or change the panels',
      place: expect.objectContaining({ line: 10, column: 1 }),
    },
  ])
})

test('a bridge without a span is told that it wants one', () => {
  const { findings } = prove('fold: bridge\nclosed: 180 x 120 mm\nleg: 20 mm')
  expect(findings.map((f) => [f.rule, f.suggestion])).toEqual([
    [
      'closed-size',
      'Add a span from `left tab` to `right tab`, 180 mm wide: without one nothing holds them together',
    ],
  ])
})

test('what folding finds stands where the part that it names is described', () => {
  const { findings } = prove(`fold: bridge
closed: 180 x 120 mm
layers:
  strip:
    on: [left leg, right leg]
spans:
  across: {from: left leg, to: floor, width: left leg.width + floor.width, height: 20 mm}`)
  expect(findings.map((f) => [f.rule, f.place?.line])).toContainEqual(['stuck-across-a-crease', 16])
})
