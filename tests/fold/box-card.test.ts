import { describe, expect, test } from 'vitest'
import type { Placement } from '../../src/fold/pose.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { same } from '../../src/length/length.ts'
import { cardOf, check, measure } from '../card/block.ts'
import { inSpace, troublesIn } from './checker.ts'

const inch = 25.4
const block = (more = '') =>
  `fold: box card\nclosed: 5 x 7 in\ndepth: 2 in\nflap: 2 1/2 in\ntab: 1/2 in\nbar: 1 in\n${more}`

// By hand: walls 3, 2, 3 and 2 in and a tab of 1/2; they are 4 1/2 high under the flaps. Two bars share a depth of 2 in:
// the third part of it is 5/8 on the ruler. A bar is as wide as the front, with a tab at both ends.
test('is cut as it was worked out by hand', () => {
  const card = cardOf(block())
  const said = ['base.size', 'base.uprights', 'base.levels', 'bar.size', 'bar.scores', 'bar.count']
  expect(said.map((name) => measure(card, name))).toEqual([
    '10 1/2 × 7 in',
    '3, 5, 8 and 10 in',
    '4 1/2 in',
    '4 × 1 in',
    '1/2 and 3 1/2 in',
    '2',
  ])
})

const distance = (from: Placement, to: Placement): number =>
  Math.abs(
    [0, 1, 2].reduce(
      (sum, i) => sum + ((to.origin[i] ?? 0) - (from.origin[i] ?? 0)) * (from.normal[i] ?? 0),
      0,
    ),
  )

describe.each([0, 1, 2, 3, 4])('with %d bars', (bars) => {
  const { structure, closed } = cardOf(block(`bars: ${bars}\n`))
  const proof = foldCard(structure)

  test('lies flat, stands square, and moves as one besides its flaps', () => {
    expect(proof.findings).toEqual([])
    expect(proof.closed && same(proof.closed.size.width, closed.width)).toBe(true)
    expect(proof.closed && same(proof.closed.size.height, closed.height)).toBe(true)
    expect(proof.freedom).toBe(1 + 3)
    for (const pose of [proof.closed?.pose, proof.between(0.4), proof.standing?.pose])
      expect(pose && troublesIn(structure, pose, { gap: 1e-5, thickness: 5 })).toEqual([])
  })

  test('its bars stand behind the front, parallel to it, one step apart', () => {
    const pose = proof.standing?.pose
    const step = Math.floor((2 * 16) / (bars + 1)) / 16
    for (const way of [proof.between(0.5), pose])
      for (let i = 1; i <= bars; i++) {
        const [front, bar] = [way?.get('front'), way?.get(`bar ${i}`)]
        if (!front || !bar) throw new Error('no pose')
        expect(front.normal.reduce((sum, x, k) => sum + x * (bar.normal[k] ?? 0), 0)).toBeCloseTo(-1, 9)
        if (way === pose) expect(distance(front, bar) / inch).toBeCloseTo(i * step, 1)
      }
  })

  test('the upper edges of the bars are level with those of the sides', () => {
    for (let i = 1; i <= bars; i++) {
      const bar = proof.standing?.pose.get(`bar ${i}`)
      expect(bar && inSpace(bar, [0, inch])[1] / inch).toBeCloseTo(4.5, 2)
    }
  })
})

test('bars without room for their tabs are refused, with a depth that has it', () => {
  const { findings } = check(block('bars: 4\n').replace('depth: 2 in', 'depth: 1 in'))
  expect(findings.map(({ rule, message, suggestion }) => [rule, message, suggestion])).toEqual([
    [
      'impossible-size',
      'A box 1 in deep has no room for the tabs of 4 bars',
      'Make the depth at least 1 1/4 in, or have fewer bars',
    ],
  ])
})
