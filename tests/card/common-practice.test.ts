import { describe, expect, test } from 'vitest'
import { readLength } from '../../src/length/text.ts'
import { cardOf, measure } from './block.ts'

/** Figures that teachers of the trade use. Common practice, no source. */
describe('cards that everyone in the trade knows', () => {
  test('a half-folded A5 sheet is an A6 card, scored at 105 mm', () => {
    const card = cardOf('fold: side\nclosed: A6', { unit: 'mm' })
    expect([measure(card, 'base.size'), measure(card, 'base.scores')]).toEqual(['210 × 148 mm', '105 mm'])
  })

  test('8 1/2 × 5 1/2 in scored at 4 1/4 is the half-letter card', () => {
    const card = cardOf('fold: side\nclosed: 4 1/4 x 5 1/2 in')
    expect([measure(card, 'base.size'), measure(card, 'base.scores')]).toEqual([
      '8 1/2 × 5 1/2 in',
      '4 1/4 in',
    ])
  })

  test('a 5 × 7 gate card is 10 × 7 scored at 2 1/2 and 7 1/2', () => {
    const card = cardOf('fold: gate\nclosed: 5 x 7 in')
    expect([measure(card, 'base.size'), measure(card, 'base.scores')]).toEqual([
      '10 × 7 in',
      '2 1/2 and 7 1/2 in',
    ])
  })

  test('a 5 × 7 Z card is 10 × 7 scored at 2 1/2 and 5', () => {
    const card = cardOf('fold: z\nclosed: 5 x 7 in')
    expect([measure(card, 'base.size'), measure(card, 'base.scores')]).toEqual([
      '10 × 7 in',
      '2 1/2 and 5 in',
    ])
  })

  test('an 8 × 6 bridge with 1 in legs: 10 × 6 scored at 1, 2, 8 and 9, the 2 and the 8 on the back', () => {
    const card = cardOf(`fold: bridge
closed: 8 x 6 in
layers:
  floor layer: {on: floor, border: {sides: 1/16 in}}
  side strip: {on: [left tab, right tab]}
spans:
  film: {height: 2 in, stock: acetate}
envelope: {make: diagonal, clearance: 1/4 in}`)
    expect(measure(card, 'base.size')).toBe('10 × 6 in')
    expect(measure(card, 'base.scores')).toBe('1, 2, 8 and 9 in')
    expect(measure(card, 'base.valleys')).toBe('2 and 8 in')
    expect(measure(card, 'floor layer.size')).toBe('5 7/8 × 6 in')
    expect(measure(card, 'side strip.size')).toBe('1 × 6 in')
    expect(measure(card, 'film.width')).toBe('8 in')
    // The trade uses a sheet of 11 × 11 with the first score at 4 7/8; computed, within 1/8 in of both.
    const off = (text: string, used: string) =>
      readLength(measure(card, text)).sub(readLength(used)).abs().lte(readLength('1/8 in'))
    expect(off('envelope.width', '11 in') && off('envelope.score', '4 7/8 in')).toBe(true)
  })

  test('a mat with 1/8 in borders on a 4 1/4 × 5 1/2 front is 4 × 5 1/4', () => {
    const card = cardOf('fold: side\nclosed: 4 1/4 x 5 1/2 in\nlayers:\n  mat: {on: front, border: 1/8 in}')
    expect(measure(card, 'mat.size')).toBe('4 × 5 1/4 in')
  })
})
