import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { larger, mm, same } from '../../src/length/length.ts'
import { card, point, sheet, strip, stuck } from './build.ts'
import { bridge, bridgeWidth, popUp } from './cards.ts'
import { troublesIn } from './checker.ts'
import { layerTroublesIn } from './layer-checker.ts'

const exact = { gap: 1e-6, thickness: 0 }
const size = fc.integer({ min: 2, max: 60 })

test('equal pleats shut to one of them, in order, whichever is shown', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 12 }),
      size,
      fc.nat(),
      fc.constantFrom<'width' | 'height'>('width', 'height'),
      (count, length, shown, along) => {
        const names = Array.from({ length: count }, (_, i) => `p${i}`)
        const parts = strip({
          panels: names.map((name) => [name, mm(length)] as const),
          folds: 'VM'.repeat(count),
          across: mm(33),
          along,
        })
        const structure = card({ parts: [parts], plate: `p${shown % count}` })
        const { closed, findings } = foldCard(structure)
        expect(findings).toEqual([])
        expect(closed && same(closed.size[along], mm(length))).toBe(true)
        expect(closed && troublesIn(structure, closed.pose, exact)).toEqual([])
        expect(closed && layerTroublesIn(structure, closed)).toEqual([])
        expect([names, names.toReversed()]).toContainEqual(closed?.order)
      },
    ),
    { numRuns: 60 },
  )
})

test('whatever a strip with any creases does, it is consistent: shut well, or refused by name', () => {
  const spec = fc.array(fc.tuple(size, fc.constantFrom('V', 'M')), { minLength: 2, maxLength: 8 })
  fc.assert(
    fc.property(spec, (panels) => {
      const parts = strip({
        panels: panels.map(([length], i) => [`p${i}`, mm(length)] as const),
        folds: panels.map(([, fold]) => fold).join(''),
        across: mm(20),
      })
      const structure = card({ parts: [parts], plate: 'p0' })
      const { closed, findings } = foldCard(structure)
      expect(findings.map((f) => f.rule)).toEqual(closed ? [] : ['layers-cross'])
      if (closed)
        expect([troublesIn(structure, closed.pose, exact), layerTroublesIn(structure, closed)]).toEqual([
          [],
          [],
        ])
    }),
    { numRuns: 200 },
  )
})

test('parallelograms of any sides shut and open, far edge first', () => {
  fc.assert(
    fc.property(size, size, fc.integer({ min: 20, max: 170 }), (a, b, degrees) => {
      const structure = popUp({ a, b, c: a, d: b, page: 125, degrees })
      const { closed, standing, findings, freedom } = foldCard(structure)
      expect(findings).toEqual([])
      expect(freedom).toBe(1)
      expect(
        closed && [troublesIn(structure, closed.pose, exact), layerTroublesIn(structure, closed)],
      ).toEqual([[], []])
      expect(standing && troublesIn(structure, standing.pose, { gap: 1e-5, thickness: 0 })).toEqual([])
    }),
    { numRuns: 40 },
  )
})

test('bridges of any leg, tab and floor shut to F + leg + max(tab, 2·tab - leg), and open square', () => {
  fc.assert(
    fc.property(size, size, fc.integer({ min: 61, max: 200 }), (leg, tab, floor) => {
      const structure = bridge({ leg, tab, floor })
      const { closed, standing, findings } = foldCard(structure)
      expect(findings).toEqual([])
      expect(closed && same(closed.size.width, bridgeWidth(mm(floor), mm(leg), mm(tab)))).toBe(true)
      expect(closed && layerTroublesIn(structure, closed)).toEqual([])
      expect(standing?.depth).toBeCloseTo(leg, 6)
      expect(standing?.width).toBeCloseTo(floor + 2 * tab, 6)
    }),
    { numRuns: 60 },
  )
})

test('sizes stay exact in inches, sevenths and whatever else', () => {
  const third = mm(100).div(3) as ReturnType<typeof mm>
  const seventh = mm(100).div(7) as ReturnType<typeof mm>
  const panels = [
    ['a', third],
    ['b', seventh],
  ] as const
  const { closed } = foldCard(card({ parts: [strip({ panels, folds: 'V', across: seventh })], plate: 'a' }))
  expect(closed && same(closed.size.width, larger(third, seventh))).toBe(true)
  expect(closed && same(closed.plates[1]?.left ?? mm(0), third.sub(seventh) as ReturnType<typeof mm>)).toBe(
    true,
  )
})

test('a crease across the corner folds the corner over, exactly', () => {
  const square = [
    point(mm(10), mm(0)),
    point(mm(60), mm(0)),
    point(mm(60), mm(60)),
    point(mm(0), mm(60)),
    point(mm(0), mm(10)),
  ]
  const corner = [point(mm(0), mm(0)), point(mm(10), mm(0)), point(mm(0), mm(10))]
  const flat = strip({ panels: [['card', mm(60)]], folds: '', across: mm(60) })
  const structure = card({
    parts: [
      {
        ...flat,
        plates: [
          { name: 'card', piece: 'base', outline: square, holes: [] },
          { name: 'ear', piece: 'base', outline: corner, holes: [] },
        ],
        hinges: [
          {
            between: ['card', 'ear'],
            line: { from: point(mm(0), mm(10)), to: point(mm(10), mm(0)) },
            fold: 'valley',
          },
        ],
      },
    ],
    plate: 'card',
    angles: [['card', 'ear', 90]],
  })
  const { closed, standing, findings } = foldCard(structure)
  expect(findings).toEqual([])
  expect(closed?.order).toEqual(['ear', 'card'])
  expect(closed?.pose.get('ear')?.origin).toEqual([expect.closeTo(10, 9), expect.closeTo(10, 9), 0])
  expect(standing && troublesIn(structure, standing.pose, exact)).toEqual([])
})

/** Two concertinas with frames between them: each frame is stuck on every second pleat of both. */
function tunnel(frames: number) {
  const high = mm(80)
  const pleats = Array.from({ length: 2 * frames }, (_, i) => i)
  const side = (piece: string, order: readonly number[]) =>
    strip({
      piece,
      panels: order.map((i) => [`${piece} ${i}`, mm(10)] as const),
      folds: 'MV'.repeat(frames),
      across: high,
    })
  const numbers = Array.from({ length: frames }, (_, i) => i)
  return card({
    parts: [
      side('left', pleats),
      side('right', pleats.toReversed()),
      ...numbers.map((i) => sheet(`frame ${i}`, mm(100), high, mm(1))),
    ],
    bonds: numbers.flatMap((i) => [
      stuck(`frame ${i}`, `left ${2 * i}`, mm(20 * i), mm(0)),
      stuck(`frame ${i}`, `right ${2 * i}`, mm(20 * (frames - i) - 100), mm(0)),
    ]),
    plate: 'frame 0',
  })
}

test('a tunnel of forty plates and seven rings shuts to its frame, frames in their order', () => {
  const structure = tunnel(8)
  const { closed, findings } = foldCard(structure)
  expect(findings).toEqual([])
  expect(closed && same(closed.size.width, mm(100))).toBe(true)
  expect(closed?.order.filter((name) => name.startsWith('frame'))).toEqual(
    Array.from({ length: 8 }, (_, i) => `frame ${i}`),
  )
  expect(closed && same(closed.thickness, mm(8))).toBe(true)
  expect(closed && layerTroublesIn(structure, closed)).toEqual([])
})

describe('one ring of equal panels, glued with a tab', () => {
  const ring = (panels: number, folds: string, degrees: number) => {
    const names = Array.from({ length: panels }, (_, i) => `p${i}`)
    const parts = strip({
      panels: [...names.map((name) => [name, mm(10)] as const), ['tab', mm(10)]],
      folds,
      across: mm(20),
    })
    return card({
      parts: [parts],
      bonds: [stuck('tab', 'p0', mm(-10 * panels), mm(0))],
      plate: 'p0',
      angles: [['p0', 'p1', degrees]],
    })
  }
  // A flat ring of valleys has two folds; one scored to and fro lies in a heap of one panel.
  test.each([
    [4, 'VVVV', 90, 20],
    [6, 'VVVVVV', 60, 30],
    [8, 'VVMVMVMVMV', 100, 10],
    [24, `VV${'MV'.repeat(11)}`, 150, 10],
  ])('%d panels scored %s', (panels, folds, degrees, width) => {
    const structure = ring(panels, folds, degrees)
    const { closed, between, findings, freedom } = foldCard(structure)
    // A ring of more than four bars moves in more ways than the one that it is led by.
    expect(findings.map(({ rule }) => rule)).toEqual(panels > 4 ? ['floppy'] : [])
    expect(closed && same(closed.size.width, mm(width))).toBe(true)
    expect(freedom).toBe(panels - 3)
    for (const share of [0.01, 0.5, 1]) {
      const pose = between(share)
      expect(pose && troublesIn(structure, pose, { gap: 1e-5, thickness: 0 })).toEqual([])
    }
  })
  test('of an odd number of panels does not shut', () =>
    expect(foldCard(ring(5, 'VVVVV', 70)).findings.map((f) => f.rule)).toEqual(['folds-flat']))
  test('with more ways to lie flat than are tried is left open, not refused', () =>
    expect(foldCard(ring(14, 'V'.repeat(14), 20)).findings.map((f) => [f.rule, f.severity])).toEqual([
      ['too-many-ways', 'warning'],
    ]))
})
