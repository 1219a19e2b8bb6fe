import { describe, expect, test } from 'vitest'
import type { Placement } from '../../src/fold/pose.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { cardOf, check, measure } from '../card/block.ts'
import { inSpace } from './checker.ts'

const block = (closed: string, stop?: string) =>
  `fold: twist easel\nclosed: ${closed}${stop ? `\nstop: ${stop}` : ''}`

const leaning = (a: Placement, b: Placement): number =>
  (Math.acos(a.normal[0] * b.normal[0] + a.normal[1] * b.normal[1] + a.normal[2] * b.normal[2]) * 180) /
  Math.PI

// By hand: with W wide and the stop s up the far edge, tan ψ = W/s and cos θ = tan(ψ/2). A stop of 3/4 W makes the
// triangle 3, 4, 5, so tan(ψ/2) = 1/2 and θ = 60°; a stop of W makes ψ = 45°, cos θ = √2 - 1; W = 12, s = 5 makes
// tan ψ = 12/5, tan(ψ/2) = 2/3.
describe.each([
  ['5 x 5 in', undefined, 60],
  ['4 x 5 in', '3 in', 60],
  ['5 x 7 in', '5 in', (Math.acos(Math.SQRT2 - 1) * 180) / Math.PI],
  ['12 x 6 in', '5 in', (Math.acos(2 / 3) * 180) / Math.PI],
] as const)('%s with its stop at %s', (closed, stop, angle) => {
  const card = cardOf(block(closed, stop))
  const { standing, findings, freedom } = foldCard(card.structure)
  const [front, floor, prop] = ['front', 'floor', 'prop'].map((name) => standing?.pose.get(name))
  if (!front || !floor || !prop) throw new Error('it does not stand')

  test(`its front leans over the floor at ${angle.toFixed(1)}°, and rests`, () => {
    expect(findings).toEqual([])
    expect(freedom).toBe(0)
    expect(leaning(front, floor)).toBeCloseTo(angle, 6)
    // The triangle is isosceles, and the prop lies face down.
    expect(180 - leaning(prop, floor)).toBeCloseTo(angle, 6)
  })

  test('the lower edge of the front lies on the floor, on the way to its stop', () => {
    const [corner, end] = [0, card.closed.width.valueOf()].map((x) => inSpace(front, [x, 0]))
    expect(corner?.[1]).toBeCloseTo(end?.[1] ?? Number.NaN, 1)
    const { up, right } = floor
    const way = [0, 1, 2].map((i) => (end?.[i] ?? 0) - (corner?.[i] ?? 0))
    const along = (axis: readonly number[]) => way.reduce((sum, x, i) => sum + x * (axis[i] ?? 0), 0)
    const value = card.names.lookup(['stop'], { start: 0, end: 0 })
    const rise = value.kind === 'length' ? value.value.valueOf() : Number.NaN
    expect(along(up) / along(right)).toBeCloseTo(rise / card.closed.width.valueOf(), 6)
  })

  test('the picture stands upright: its upper edge is above its lower edge, all along', () => {
    const high = [0, card.closed.width.valueOf()].map(
      (x) => inSpace(front, [x, card.closed.height.valueOf()])[1],
    )
    const low = inSpace(front, [0, 0])[1]
    const height = card.closed.height.valueOf() * Math.sin((angle * Math.PI) / 180)
    for (const y of high) expect(y - low).toBeCloseTo(height, 1)
  })
})

test('the diagonal is told as two marks on the edges of the base', () => {
  const card = cardOf(block('5 x 7 in'))
  expect(measure(card, 'base.size')).toBe('10 × 7 in')
  expect(measure(card, 'base.scores')).toBe('5 in')
  expect(measure(card, 'base.slants')).toBe('from the left edge at 5 in to the lower edge at 5 in')
})

test('a stop that is not on the floor is refused', () => {
  const { findings } = check(block('5 x 5 in', '6 in'))
  expect(findings.map(({ rule, message, suggestion }) => [rule, message, suggestion])).toEqual([
    [
      'impossible-size',
      'A stop at 6 in is not on a floor 5 in high',
      'Make the stop at most 5 in; three quarters of that is usual',
    ],
  ])
})
