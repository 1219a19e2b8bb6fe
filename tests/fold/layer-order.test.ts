import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { mm, zero } from '../../src/length/length.ts'
import stamps from '../data/stamps.json' with { type: 'json' }
import { card, sheet, strip, stuck } from './build.ts'
import { bridge } from './cards.ts'
import { layerTroublesIn } from './layer-checker.ts'
import { countLayerOrders } from './layer-count.ts'

const stripCard = (lengths: readonly number[], folds: string) =>
  card({
    parts: [
      strip({ panels: lengths.map((length, i) => [`p${i}`, mm(length)] as const), folds, across: mm(10) }),
    ],
    plate: 'p0',
  })

const assignments = (creases: number): string[] =>
  creases === 0 ? [''] : assignments(creases - 1).flatMap((rest) => [`${rest}V`, `${rest}M`])

describe('a strip of stamps', () => {
  test.each(stamps.foldings.slice(0, 7))(
    'of $stamps folds in $expect ways',
    ({ stamps: n, expect: ways }) => {
      const lengths = Array.from({ length: n }, () => 10)
      const counts = assignments(n - 1).map((folds) => countLayerOrders(stripCard(lengths, folds)))
      expect(counts.reduce((sum, count) => sum + count, 0)).toBe(ways)
    },
  )
})

/**
 * All orders of a folded strip by trying every permutation against the physical rules, written for strips only: a
 * different way to the same count.
 */
function countByPermutations(lengths: readonly number[], folds: string): number {
  const ends = [0]
  for (const [i, length] of lengths.entries())
    ends.push((ends.at(-1) ?? 0) + (i % 2 === 0 ? length : -length))
  const spans = lengths.map(
    (_, i) => [ends[i] ?? 0, ends[i + 1] ?? 0].sort((a, b) => a - b) as [number, number],
  )
  const meet = (i: number, j: number) => {
    const [[a, b], [c, d]] = [spans[i] ?? [0, 0], spans[j] ?? [0, 0]]
    return Math.min(b, d) > Math.max(a, c)
  }
  const creases = [...folds].map((fold, i) => ({ fold, i, u: ends[i + 1] ?? 0 }))
  const isRight = (height: readonly number[]): boolean => {
    const h = (i: number) => height[i] ?? 0
    const inside = (k: number, i: number) =>
      h(k) > Math.min(h(i), h(i + 1)) && h(k) < Math.max(h(i), h(i + 1))
    return creases.every(({ fold, i, u }) => {
      const up = i % 2 === 0
      if (h(i + 1) > h(i) !== ((fold === 'V') === up)) return false
      if (spans.some(([a, b], k) => a < u && u < b && inside(k, i))) return false
      return creases.every(
        (o) => o.i <= i || o.u !== u || (o.i - i) % 2 !== 0 || inside(o.i, i) === inside(o.i + 1, i),
      )
    })
  }
  const pairs = lengths.flatMap((_, i) =>
    lengths.flatMap((_, j) => (i < j && meet(i, j) ? [[i, j] as const] : [])),
  )
  const seen = permutations(lengths.length)
    .filter(isRight)
    .map((height) => pairs.map(([i, j]) => ((height[i] ?? 0) > (height[j] ?? 0) ? 1 : 0)).join(''))
  return new Set(seen).size
}

function permutations(n: number): number[][] {
  if (n === 0) return [[]]
  return permutations(n - 1).flatMap((rest) =>
    Array.from({ length: n }, (_, at) => [...rest.slice(0, at), n - 1, ...rest.slice(at)]),
  )
}

test('strips of any lengths fold in as many ways as trying all permutations finds', () => {
  const length = fc.integer({ min: 1, max: 4 })
  const creased = fc.array(length, { minLength: 2, maxLength: 6 }).chain((lengths) =>
    fc.tuple(
      fc.constant(lengths),
      fc.string({
        unit: fc.constantFrom('V', 'M'),
        minLength: lengths.length - 1,
        maxLength: lengths.length - 1,
      }),
    ),
  )
  fc.assert(
    fc.property(creased, ([lengths, folds]) => {
      expect(countLayerOrders(stripCard(lengths, folds))).toBe(countByPermutations(lengths, folds))
    }),
    { numRuns: 150 },
  )
})

test('two bridges, tab on tab, nest in one way only', () => {
  // Left they lie open, the second behind the first. Right, its leg must come in front of the first leg, so that its
  // tab ends up right behind the first tab: legs of the two interlock otherwise.
  const [first, bare] = [bridge({ strips: 1 }), bridge({ strips: 0 })]
  const second = (panel: string) => `second ${panel}`
  const again = {
    pieces: bare.pieces.map((piece) => ({ ...piece, name: second(piece.name) })),
    plates: bare.plates.map((plate) => ({ ...plate, name: second(plate.name), piece: second(plate.piece) })),
    hinges: bare.hinges.map(({ between: [p, q], ...hinge }) => ({
      ...hinge,
      between: [second(p), second(q)] as const,
    })),
  }
  const behind = (tab: string) => stuck(second(tab), tab, zero, zero, { side: 'back' })
  const structure = card({
    parts: [first, again],
    bonds: [...first.bonds, behind('left tab'), behind('right tab')],
    plate: 'floor',
  })
  expect(countLayerOrders(structure)).toBe(1)
  const { closed } = foldCard(structure)
  expect(closed && layerTroublesIn(structure, closed)).toEqual([])
})

test('of two orders, the panel that comes first in the structure lies in front', () => {
  const panels = [
    ['cover', mm(50)],
    ['back', mm(50)],
    ['tuck', mm(48)],
  ] as const
  const letter = card({ parts: [strip({ panels, folds: 'VV', across: mm(70) })], plate: 'back' })
  expect(foldCard(letter).closed?.order).toEqual(['cover', 'tuck', 'back'])
})

describe('what is stuck on', () => {
  const panels = [
    ['front', mm(50)],
    ['back', mm(50)],
  ] as const
  const base = strip({ panels, folds: 'V', across: mm(40) })
  test('lies on its side of the panel, later pieces outside earlier ones', () => {
    const { closed } = foldCard(
      card({
        parts: [
          base,
          sheet('mat', mm(40), mm(30)),
          sheet('label', mm(20), mm(20)),
          sheet('note', mm(40), mm(30)),
        ],
        bonds: [
          stuck('mat', 'front', mm(45), mm(5), { side: 'back', over: true }),
          stuck('label', 'front', mm(35), mm(10), { side: 'back', over: true }),
          stuck('note', 'back', mm(55), mm(5)),
        ],
        plate: 'back',
      }),
    )
    expect(closed?.order).toEqual(['label', 'mat', 'front', 'note', 'back'])
    expect(closed?.plates.map((p) => [p.plate, p.faceUp])).toEqual([
      ['front', false],
      ['back', true],
      ['mat', true],
      ['label', true],
      ['note', true],
    ])
  })
  test('is the same when it was put together before it is stuck on, turned over', () => {
    const { closed, findings } = foldCard(
      card({
        parts: [base, sheet('mat', mm(40), mm(30)), sheet('label', mm(20), mm(20))],
        bonds: [
          stuck('label', 'mat', mm(5), mm(5)),
          stuck('mat', 'front', mm(45), mm(5), { side: 'back', over: true }),
        ],
        plate: 'back',
      }),
    )
    expect(findings).toEqual([])
    expect(closed?.order).toEqual(['label', 'mat', 'front', 'back'])
  })
  test('a hem that is folded over and glued is no piece across a crease', () => {
    const hem = strip({
      panels: [
        ['hem', mm(10)],
        ['front', mm(50)],
        ['back', mm(50)],
      ],
      folds: 'VV',
      across: mm(40),
    })
    const glued = stuck('hem', 'front', mm(20), zero, { over: true })
    const { closed, findings } = foldCard(card({ parts: [hem], bonds: [glued], plate: 'back' }))
    expect(findings).toEqual([])
    expect(closed?.order).toEqual(['front', 'hem', 'back'])
  })
  test('a hem scored for the other side cannot be glued on this one', () => {
    const hem = strip({
      panels: [
        ['hem', mm(10)],
        ['front', mm(50)],
        ['back', mm(50)],
      ],
      folds: 'MV',
      across: mm(40),
    })
    const glued = stuck('hem', 'front', mm(20), zero, { over: true })
    const { findings } = foldCard(card({ parts: [hem], bonds: [glued], plate: 'back' }))
    expect(findings.map((f) => f.rule)).toEqual(['layers-cross'])
  })
})
