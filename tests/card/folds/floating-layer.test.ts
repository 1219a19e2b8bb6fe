import { describe, expect, test } from 'vitest'
import { foldCard } from '../../../src/fold/prove.ts'
import { formatLength, formatSize } from '../../../src/length/format.ts'
import { inSpace } from '../../fold/checker.ts'
import { cardOf, check, measure } from '../block.ts'

const inch = 25.4
// As thin as nothing, so that the pose is that of the sheets' middles.
const block =
  'fold: floating layer\nclosed: 5 x 7 in\nstilt: 3/4 in\nborder: 1/4 in\nbase: {caliper: 0.001 mm}'
const card = cardOf(block)
const { closed, standing, between, freedom, findings } = foldCard(card.structure)
const sizes = Object.fromEntries(
  ['base', 'raised panel', 'stilts', 'link'].map((piece) => [piece, measure(card, `${piece}.size`)]),
)

/**
 * By hand, with stilts of 3/4, tabs of 3/8 and a border of 1/4. Panel: 5 - 2 · (3/4 + 1/4) = 3, 7 - 1/2 = 6 1/2. Stilts:
 * 3/8 + 3/4 + 3/8 = 1 1/2, a border less at both ends. Link: 3/8 + (3/4 + 1/4 + 3/8) = 1 3/4; a third of 6 1/2 on the
 * ruler is 2 1/8, which leaves 2 1/4.
 */
test('the pieces of a 5 × 7 card', () => {
  expect(sizes).toEqual({
    base: '10 × 7 in',
    'raised panel': '3 × 6 1/2 in',
    stilts: '1 1/2 × 6 in',
    link: '1 3/4 × 2 1/4 in',
  })
  expect([
    measure(card, 'stilts.count'),
    measure(card, 'stilts.scores'),
    measure(card, 'link.scores'),
  ]).toEqual(['2', '3/8 and 1 1/8 in', '3/8 in'])
})

test('shut, it keeps its border on three sides, and moves as one', () => {
  expect(findings).toEqual([])
  expect(freedom).toBe(1)
  expect(closed && formatSize(closed.size, 'in')).toBe('5 × 7 in')
  const laid = closed?.plates.find(({ plate }) => plate === 'raised panel')
  if (!laid) throw new Error('not laid')
  // The left edge is at stilt + border + stilt.
  expect([laid.left, laid.bottom].map((x) => formatLength(x, 'in'))).toEqual(['1 3/4 in', '1/4 in'])
  expect(closed?.order.slice(0, 2)).toEqual(['front', 'link tab'])
  expect(closed?.order.at(-1)).toBe('back')
})

describe('opened', () => {
  test.each([0.25, 0.5, 0.8, 1])(
    '%d of the way it is parallel to the back, and as high as its stilts stand',
    (way) => {
      const pose = way === 1 ? standing?.pose : between(way)
      const [back, panel, front] = ['back', 'raised panel', 'front'].map((name) => pose?.get(name))
      if (!back || !panel || !front) throw new Error('no pose')
      const dot = (a: readonly number[], b: readonly number[]) =>
        a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0)
      expect(dot(back.normal, panel.normal)).toBeCloseTo(1, 9)
      // The front leans as the stilts do.
      const lean = Math.acos(-dot(back.right, front.right))
      const [spine, corner] = [inSpace(back, [5 * inch, 0]), inSpace(panel, [0, 0])]
      const high = dot(
        corner.map((x, i) => x - (spine[i] ?? 0)),
        back.normal,
      )
      expect(Math.abs(high - 0.75 * inch * Math.sin(Math.PI - lean))).toBeLessThan(0.01)
    },
  )

  test('square, it is centred on the back', () => {
    const [back, panel] = ['back', 'raised panel'].map((name) => standing?.pose.get(name))
    if (!back || !panel) throw new Error('no pose')
    const across = (point: readonly number[]) =>
      point.reduce(
        (sum, x, i) => sum + (x - (inSpace(back, [5 * inch, 0])[i] ?? 0)) * (back.right[i] ?? 0),
        0,
      )
    expect(across(inSpace(panel, [0, 0]))).toBeCloseTo(inch, 2)
    expect(across(inSpace(panel, [3 * inch, 0]))).toBeCloseTo(4 * inch, 2)
  })
})

// 2 · s + 3 · s/2 + 1/16 may be 4 1/2 at most: s = 1.27, on the ruler 1 1/4. The tab stays 1/16 from the spine.
test.each([
  ['stilt: 2 in\nborder: 1/4 in', 'Make the stilt at most 1 1/4 in'],
  ['stilt: 1/16 in', 'Make the stilt at least 1/8 in'],
  ['stilt: 3/4 in\ntab: 3/4 in', 'Make the tab at most 11/16 in'],
  ['border: 2 in', 'Make the border at most 1 3/16 in'],
])('%j is refused', (lengths, cure) => {
  const told = check(`fold: floating layer\nclosed: 5 x 7 in\n${lengths}`).findings
  expect(told.map(({ rule, suggestion }) => [rule, suggestion])).toEqual([['impossible-size', cure]])
})
