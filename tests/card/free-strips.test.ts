import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { numberIn } from '../../src/length/length.ts'
import { inSpace } from '../fold/checker.ts'
import { check, measure } from './block.ts'
import { cutsOf, folded, stagger } from './folded.ts'
import { troublesOfSheets } from './sheets.ts'

const inch = 25.4

describe('strips that share panels', () => {
  test('are one sheet with a slit where their panels differ', () => {
    const { card, closed } = folded(stagger)
    // Shut, the right part moves left by twice the wall; so the sheet is 7 + 2 · 1 wide.
    expect([measure(card, 'base.size'), closed]).toEqual(['9 × 5 in', '7 × 5 in'])
    expect([measure(card, 'upper.scores'), measure(card, 'lower.scores')]).toEqual([
      '2 1/2 and 3 1/2 in',
      '5 and 6 in',
    ])
    expect([measure(card, 'base.mountains'), measure(card, 'base.valleys')]).toEqual([
      '2 1/2 and 5 in',
      '3 1/2 and 6 in',
    ])
    expect(cutsOf(card.structure)).toEqual([[2.5, 2, 6, 2]])
    expect([
      measure(card, 'upper.height'),
      measure(card, 'front.size'),
      measure(card, 'upper.front'),
    ]).toEqual(['3 in', '5 × 5 in', '2 1/2 in'])
  })

  test('stand as deep as their walls, and move as one', () => {
    const { proof } = folded(stagger)
    const { width = 0, height = 0, depth = 0 } = proof.standing ?? {}
    expect([width, height, depth].map((x) => Math.round((x / inch) * 1e6) / 1e6)).toEqual([8, 5, 1])
    expect(proof.freedom).toBe(1)
  })

  test('are a metric card in millimetres', () => {
    const { card, closed } = folded(stagger, { unit: 'mm', closed: '180 x 121 mm' })
    // 2 1/2 in is 63.5 mm, and 5 in 127 mm; the wall 25.4 mm.
    expect([measure(card, 'base.size'), closed]).toEqual(['230 × 121 mm', '180 × 121 mm'])
    expect([measure(card, 'upper.scores'), measure(card, 'lower.scores')]).toEqual([
      '63 and 88 mm',
      '127 and 152 mm',
    ])
  })

  test('a box step: the wall folds out as far as its floor is cut back', () => {
    const { card, proof, closed } = folded(`fold: free
closed: 5 x 6 in
strips:
  upper: {panels: {front: 5 in, back: 5 in}, creases: [valley]}
  lower:
    height: 2 in
    panels: {front: 4 in, side: 1 1/2 in, face: 1 in, back: }
    creases: [valley, mountain, valley]
stand: {panel: back, creases: [{between: [front, back], bent: 90}]}`)
    // The front is cut back by 1 in and the back by 1 1/2 in; shut, the ridge lies 2 1/2 in from the spine.
    expect([measure(card, 'lower.scores'), measure(card, 'upper.scores'), closed]).toEqual([
      '4, 5 1/2 and 6 1/2 in',
      '5 in',
      '5 × 6 in',
    ])
    expect(cutsOf(card.structure)).toEqual([[4, 2, 6.5, 2]])
    const pose = proof.standing?.pose
    const [back, side] = [pose?.get('back'), pose?.get('side')]
    const [spine, ridge] = [back && inSpace(back, [5 * inch, 0]), side && inSpace(side, [5.5 * inch, 0])]
    const away = spine && ridge && Math.hypot(...ridge.map((x, i) => x - (spine[i] ?? 0)))
    expect(away).toBeCloseTo(Math.hypot(1, 1.5) * inch, 6)
  })

  test('the same crease in two strips is one line', () => {
    const { card } = folded(`fold: free
closed: 5 x 6 in
strips:
  upper: {panels: {front: 5 in, back: 5 in}, creases: [valley]}
  lower: {height: 2 in, panels: {front, back}, creases: [valley]}`)
    expect(card.structure.hinges).toHaveLength(1)
    expect(cutsOf(card.structure)).toEqual([])
  })

  test('may lie side by side, with level creases', () => {
    const { card, closed } = folded(`fold: free
closed: 5 x 7 in
along: height
strips:
  left: {panels: {back: 7 in, wall: 1 in, front: 5 in}, creases: [valley, mountain]}
  right: {width: 2 in, panels: {back: 3 in, low wall: 1 in, front}, creases: [valley, mountain]}`)
    expect([measure(card, 'base.size'), measure(card, 'left.scores'), closed]).toEqual([
      '5 × 13 in',
      '7 and 8 in',
      '5 × 11 in',
    ])
    // The left strip is as wide as the right one leaves, 3 in, so the slit is there.
    expect(cutsOf(card.structure)).toEqual([[3, 3, 3, 8]])
  })

  test('may be shorter than the sheet; what is over is cut away', () => {
    const { card } = folded(`fold: free
closed: 5 x 6 in
strips:
  upper: {panels: {front: 5 in, back: 5 in}, creases: [valley]}
  lower: {height: 2 in, panels: {front: 5 in, flap: 3 in}, creases: [valley]}`)
    expect(cutsOf(card.structure)).toEqual([
      [5, 2, 10, 2],
      [8, 0, 8, 2],
    ])
  })

  test('whatever their lengths, they can be cut from one sheet', () => {
    const length = fc.integer({ min: 1, max: 30 })
    fc.assert(
      fc.property(fc.array(length, { minLength: 4, maxLength: 8 }), length, length, (all, low, high) => {
        const half = Math.floor(all.length / 2)
        const middle = (from: number, to: number) =>
          all.slice(from, to).map((x, i) => `p${from + i}: ${x} mm`)
        const sum = (from: number, to: number) => all.slice(from, to).reduce((a, b) => a + b, 0)
        const longer = Math.max(0, sum(half, all.length) - sum(0, half))
        const creases = (n: number) => `creases: [${Array.from({ length: n + 1 }, () => 'valley').join()}]`
        const { card, findings } = check(
          `fold: free
closed: 10 x ${low + high} mm
strips:
  upper: {panels: {a: 5 mm, ${middle(0, half).join()}, b: ${longer + 9} mm}, ${creases(half)}}
  lower: {height: ${low} mm, panels: {a: 7 mm, ${middle(half, all.length).join()}, b}, ${creases(all.length - half)}}`,
          { unit: 'mm' },
        )
        expect(findings).toEqual([])
        expect(card && troublesOfSheets(card.structure)).toEqual([])
      }),
    )
  })
})

describe('strips that cross', () => {
  const cross = `fold: free
closed: 4 x 3 in
strips:
  row: {height: 3 in, panels: {left wall: 2 in, floor: 4 in, right wall: 2 in}, creases: [valley, valley]}
  column: {along: height, panels: {near wall: 2 in, floor, far wall: 2 in}, creases: [valley, valley]}
shut:
  - {between: [left wall, floor], bent: 90}
  - {between: [right wall, floor], bent: 90}
  - {between: [near wall, floor], bent: 90}
  - {between: [far wall, floor], bent: 90}
stand:
  panel: floor
  rests: flat
  creases: [{between: [left wall, floor], bent: 0}, {between: [far wall, floor], bent: 90}]`

  test('make a cross, and its corners are cut away', () => {
    const { card, closed } = folded(cross)
    expect([measure(card, 'base.size'), closed]).toEqual(['8 × 7 in', '4 × 3 in'])
    expect([measure(card, 'row.scores'), measure(card, 'column.scores')]).toEqual([
      '2 and 6 in',
      '2 and 5 in',
    ])
    expect(cutsOf(card.structure)?.map(String).sort()).toEqual(
      ['0,2,2,2', '0,5,2,5', '6,2,8,2', '6,5,8,5', '2,0,2,2', '2,5,2,7', '6,0,6,2', '6,5,6,7'].sort(),
    )
    expect(measure(card, 'near wall.size')).toBe('4 × 2 in')
  })

  test('shut, they stand round the floor', () => {
    const { proof } = folded(cross)
    expect(proof.closed && numberIn(proof.closed.thickness, 'in')).toBeCloseTo(2, 1)
    expect(proof.closed?.isFlat).toBe(false)
  })

  test('a narrower one lies in the middle of the panel that it crosses', () => {
    const { card } = folded(`fold: free
closed: 5 x 7 in
strips:
  row: {panels: {front: 5 in, back: 5 in}, creases: [valley]}
  tongue: {along: height, width: 4 in, panels: {tab: 1 in, back}, creases: [valley]}`)
    expect(measure(card, 'tongue.scores')).toBe('1 in')
    const line = card.structure.hinges.find(({ between }) => between.includes('tab'))?.line
    expect(line && [line.from.x, line.to.x].map((x) => numberIn(x, 'in'))).toEqual([5.5, 9.5])
  })
})
