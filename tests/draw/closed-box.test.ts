import { expect, test } from 'vitest'
import type { drawFigure } from '../../src/draw/draw.ts'
import { cardOf } from './cards.ts'
import { drawn, textsOf } from './figures.ts'
import { byClass } from './svg.ts'

/** A band 5 in wide, 2 in high and 1 in deep, glued together behind. */
const band = cardOf(`fold: free
closed: 5 x 2 in
panels: {back: 5 in, right side: 1 in, front: 5 in, left side: 1 in, overlap: 1 in}
creases: [valley, valley, valley, valley]
bonds: [{panel: overlap, onto: back, side: outside, left: 0 in, bottom: 0 in}]
shut:
  - {between: [back, right side], bent: 90}
  - {between: [right side, front], bent: 90}
  - {between: [front, left side], bent: 90}
  - {between: [left side, overlap], bent: 90}
stand: {panel: back, rests: upright}`)

test('a box is drawn shut as one stands, with its depth', () => {
  const figure = drawn('closed', band)
  expect(band.proof.closed?.isFlat).toBe(false)
  expect(textsOf(figure.svg, 'legend')).toEqual(['5 × 2 in, about 1 in deep'])
  expect(figure.alternative).toContain(
    'box shut, seen from the front left and slightly above: 5 × 2 in, about 1 in deep',
  )
  // All five panels are there: none lies behind another all over, as they would straight from the front.
  expect(byClass(figure.svg, 'face').length).toBeGreaterThanOrEqual(5)
})

test('it keeps to its room', () => {
  const { width, height } = drawn('closed', band, undefined, 'in', { maxWidth: 40, maxHeight: 30 })
  expect(width).toBeLessThanOrEqual(40.1)
  expect(height).toBeLessThanOrEqual(30.1)
})

test('without a legend a flat piece is its lines and measures; several pieces can be to one scale', () => {
  const { card, proof } = band
  const flat = (options: Parameters<typeof drawFigure>[4]) =>
    drawn('flat', { card, proof }, 'base', 'in', options)
  const usual = flat({})
  const bare = flat({ legend: false })
  expect(textsOf(usual.svg, 'legend').join(' ')).toContain('valley')
  expect(textsOf(bare.svg, 'legend')).toEqual([])
  expect(bare.alternative).toBe(usual.alternative)
  // 13 in at a tenth of their length are 33.02 mm, and dimensions stand round them.
  const small = flat({ legend: false, mostScale: 0.1 })
  const [stock] = byClass(small.svg, 'stock')
  expect(String(stock?.properties?.d)).toContain('L33.02 ')
})
