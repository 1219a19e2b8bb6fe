import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { formatSize } from '../../src/length/format.ts'
import { inches, mm } from '../../src/length/length.ts'
import { card, strip } from './build.ts'
import { bridge, easel } from './cards.ts'

// The figures of this file are common practice without a published source.

const closedText = (structure: Parameters<typeof foldCard>[0]) => {
  const { closed, findings } = foldCard(structure)
  expect(findings).toEqual([])
  return closed && formatSize(closed.size, 'in')
}
const inch = 25.4

test('a 7 × 5 sheet scored in the middle is half as wide', () => {
  const panels = [
    ['front', inches(7, 2)],
    ['back', inches(7, 2)],
  ] as const
  expect(closedText(card({ parts: [strip({ panels, folds: 'V', across: inches(5) })], plate: 'back' }))).toBe(
    '3 1/2 × 5 in',
  )
})

test('an A5 sheet scored at 105 mm is an A6 card', () => {
  const panels = [
    ['front', mm(105)],
    ['back', mm(105)],
  ] as const
  const { closed } = foldCard(
    card({ parts: [strip({ panels, folds: 'V', across: mm(148) })], plate: 'back' }),
  )
  expect(closed && formatSize(closed.size, 'mm')).toBe('105 × 148 mm')
})

test('10 × 7 scored at 2 1/2 and 7 1/2 is a 5 × 7 gate card whose doors meet', () => {
  const panels = [
    ['left door', inches(5, 2)],
    ['back', inches(5)],
    ['right door', inches(5, 2)],
  ] as const
  const structure = card({ parts: [strip({ panels, folds: 'VV', across: inches(7) })], plate: 'back' })
  expect(closedText(structure)).toBe('5 × 7 in')
  expect(foldCard(structure).closed?.order).toEqual(['left door', 'right door', 'back'])
})

test('10 × 7 scored at 2 1/2 and 5 is a 5 × 7 z card', () => {
  const panels = [
    ['tongue', inches(5, 2)],
    ['middle', inches(5, 2)],
    ['back', inches(5)],
  ] as const
  const structure = card({ parts: [strip({ panels, folds: 'MV', across: inches(7) })], plate: 'back' })
  expect(closedText(structure)).toBe('5 × 7 in')
  expect(foldCard(structure).closed?.order).toEqual(['tongue', 'middle', 'back'])
})

describe('an 8 × 6 bridge with 1 in legs', () => {
  const structure = bridge({ leg: inch, tab: inch, floor: 6 * inch, high: 6 * inch })
  test('a 10 × 6 base scored at 1, 2, 8 and 9 closes to 8 × 6', () => {
    expect(closedText(structure)).toBe('8 × 6 in')
  })
  test('stands leg deep and floor and two tabs wide', () => {
    const { standing } = foldCard(structure)
    expect(standing?.depth).toBeCloseTo(inch, 9)
    expect(standing?.width).toBeCloseTo(8 * inch, 9)
    expect(standing?.height).toBeCloseTo(6 * inch, 9)
  })
})

test.each([
  [1, 2],
  [5, 2],
  [4, 1],
])('an easel of 5 in with its stop at %d/%d in leans at cos θ = s/H', (n, d) => {
  const { standing, findings } = foldCard(easel(inches(5), inches(n, d)))
  expect(findings).toEqual([])
  const lean = Math.acos(n / d / 5)
  expect(standing?.height).toBeCloseTo(5 * inch * Math.sin(lean), 6)
  // The front's top stands above the spine: it leans back as far as its foot is away from it.
  const front = standing?.pose.get('front')
  expect(Math.atan2(front?.up[1] ?? 0, -(front?.up[2] ?? 0))).toBeCloseTo(lean, 9)
})
