import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { mm } from '../../src/length/length.ts'
import { card, sheet, strip, stuck } from './build.ts'
import { popUp } from './cards.ts'

/**
 * A box that steps up 30 mm from page 1, with a sign on its front wall. Stuck on the wall from 10 mm above its foot, a
 * sign as long as 10 + x hangs x below the foot: shut it lies on top, standing it would go through the page.
 */
function signed(below: number) {
  const c = 30
  const pop = popUp({ a: 30, b: 50, c, d: 50, degrees: 90 })
  const sign = sheet('sign', mm(10 + below), mm(8))
  const bonds = [
    ...pop.bonds,
    stuck('sign', 'b', mm(10 + c + 50 + below), mm(6), { side: 'back', over: true }),
  ]
  return { ...pop, pieces: [...pop.pieces, ...sign.pieces], plates: [...pop.plates, ...sign.plates], bonds }
}

describe('plates-cross: what stands must not go through what lies', () => {
  test('a sign that hangs through the page is told with the length to cut off', () => {
    const { closed, findings } = foldCard(signed(7))
    expect(closed).toBeDefined()
    expect(findings).toEqual([
      {
        rule: 'plates-cross',
        severity: 'error',
        message: 'When the card opens, `sign` would have to run through `page 1`, by 7 mm',
        suggestion: 'Make `sign` 7 mm shorter on that side, or put it farther from `page 1`',
      },
    ])
  })
  test('cut off by that much, nothing is told', () => {
    expect(foldCard(signed(0)).findings).toEqual([])
  })
})

/** back, cover and tuck of 40 mm: the tuck lies inside the cover. */
const letter = card({
  parts: [
    strip({
      panels: [
        ['cover', mm(40)],
        ['back', mm(40)],
        ['tuck', mm(39)],
      ],
      folds: 'VV',
      across: mm(60),
    }),
  ],
  plate: 'back',
  angles: [
    ['cover', 'back', 100],
    ['back', 'tuck', 90],
  ],
})

test('creases that nothing leads open one after the other where they would meet', () => {
  const { findings, folding, between } = foldCard(letter)
  expect(findings).toEqual([])
  expect(folding()).toEqual([
    ['back', 'tuck'],
    ['cover', 'back'],
  ])
  // What is folded last is opened first: half way the tuck has not moved.
  const normals = [0, 0.5, 1].map((share) => between(share)?.get('tuck')?.normal ?? [])
  const moved = normals.map((normal) => normal.some((x, i) => Math.abs(x - (normals[0]?.[i] ?? 0)) > 1e-9))
  expect(moved).toEqual([false, false, true])
})
