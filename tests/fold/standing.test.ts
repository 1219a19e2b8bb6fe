import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { inches, mm, toMm, zero } from '../../src/length/length.ts'
import { card, sheet, strip, stuck } from './build.ts'
import { bridge, easel, popUp } from './cards.ts'
import { inSpace, plateOf, troublesIn } from './checker.ts'
import { layerTroublesIn } from './layer-checker.ts'

const shares = [0, 0.001, 0.02, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 0.98, 1]
const cards = {
  bridge: bridge({ strips: 3 }),
  'bridge of card with foam': bridge({ strips: 3, caliper: 0.4, raise: 2 }),
  'bridge with wide tabs': bridge({ leg: 15, tab: 35 }),
  'bridge with narrow tabs': bridge({ leg: 35, tab: 15, degrees: 60 }),
  easel: easel(inches(5), inches(5, 2)),
  'flat easel': easel(inches(5), inches(9, 2), mm(0.3)),
  'pop-up': popUp({ degrees: 120 }),
  'uneven pop-up': popUp({ a: 20, b: 70, c: 60, d: 30, degrees: 150 }),
}

describe.each(Object.entries(cards))('%s', (_, structure) => {
  const { closed, standing, between, findings } = foldCard(structure)
  const sheets = structure.pieces.map((piece) => toMm(piece.stock.caliper) + 2)
  const thickness = structure.pieces.some((p) => p.stock.caliper.n !== 0n)
    ? sheets.reduce((a, b) => a + b)
    : 0
  const tolerance = { gap: 1e-5, thickness }
  test('folds without a word', () => expect(findings).toEqual([]))
  test('shut, every plate is whole and every crease together', () => {
    expect(closed && troublesIn(structure, closed.pose, tolerance)).toEqual([])
    expect(closed && layerTroublesIn(structure, closed)).toEqual([])
  })
  test.each(shares)('after %d of the way too', (share) => {
    const pose = between(share)
    expect(pose && troublesIn(structure, pose, tolerance)).toEqual([])
  })
  test('there is nothing before shut and beyond standing', () =>
    expect([between(-0.1), between(1.1), between(Number.NaN)]).toEqual([undefined, undefined, undefined]))
  test('stands on the table and nothing is below it', () => {
    const corners = structure.plates.flatMap(({ name, outline }) => {
      const at = standing?.pose.get(name)
      return at ? outline.map(({ x, y }) => inSpace(at, [toMm(x), toMm(y)])) : []
    })
    expect(Math.min(...corners.map(([, y]) => y))).toBeCloseTo(0, 9)
  })
  test('the way has no jumps', () => {
    const poses = Array.from({ length: 101 }, (_, i) => between(i / 100))
    for (const [i, pose] of poses.entries())
      for (const [name, at] of pose ?? []) {
        const before = poses[i - 1]?.get(name)
        if (!before) continue
        for (const corner of plateOf(structure, name).outline) {
          const point = [toMm(corner.x), toMm(corner.y)] as const
          const [a, b] = [inSpace(at, point), inSpace(before, point)]
          expect(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])).toBeLessThan(25)
        }
      }
  })
})

test('the plate that stays put does, and lies or stands as asked', () => {
  const upright = foldCard({ ...cards.bridge, display: { ...cards.bridge.display, turn: 0 } })
  expect(upright.standing?.pose.get('floor')).toMatchObject({
    right: [1, 0, 0],
    up: [0, 1, 0],
    normal: [0, 0, 1],
  })
  const { between, standing } = foldCard(cards.easel)
  const base = standing?.pose.get('base')
  expect(base?.normal[1]).toBeCloseTo(1, 12)
  // Its upper edge, where the spine is, lies away from the viewer.
  expect(base?.up[2]).toBeCloseTo(-1, 12)
  for (const share of [0, 0.3, 1])
    expect(between(share)?.get('base')?.origin[0]).toBeCloseTo(base?.origin[0] ?? 0, 9)
})

test('turn shows the card from another side without changing its size', () => {
  const turned = foldCard({ ...cards.bridge, display: { ...cards.bridge.display, turn: 30 } }).standing
  const plain = foldCard(cards.bridge).standing
  expect(turned?.depth).toBeCloseTo(plain?.depth ?? 0, 9)
  // A positive turn brings the right end of the card away from the viewer: its face then looks to the right.
  expect(turned?.pose.get('floor')?.normal).toEqual([
    expect.closeTo(0.5, 9),
    0,
    expect.closeTo(Math.sqrt(3) / 2, 9),
  ])
})

describe('freedom', () => {
  const chain = (n: number) =>
    card({
      parts: [
        strip({
          panels: Array.from({ length: n }, (_, i) => [`p${i}`, mm(20)] as const),
          folds: 'VM'.repeat(n),
          across: mm(30),
        }),
      ],
      plate: 'p0',
    })
  test.each([1, 2, 5])('a chain of %d panels moves at each crease', (n) =>
    expect(foldCard(chain(n)).freedom).toBe(n - 1),
  )
  test('a bridge moves as one however many strips it has', () => {
    for (const strips of [1, 4]) expect(foldCard(bridge({ strips })).freedom).toBe(1)
  })
  test('an easel that rests on its stop is rigid', () => expect(foldCard(cards.easel).freedom).toBe(0))
  test('a ring that stays shut is counted by how it would move', () => {
    const still = { ...cards['pop-up'], display: { ...cards['pop-up'].display, angles: [] } }
    expect(foldCard(still)).toMatchObject({ freedom: 1, findings: [] })
  })
  test('a bridge without a strip is floppy', () => expect(foldCard(bridge({ strips: 0 })).freedom).toBe(4))
})

test('creases that nothing leads stay as they are when shut', () => {
  const panels = [
    ['door', mm(20)],
    ['back', mm(50)],
    ['flap', mm(20)],
  ] as const
  const structure = card({
    parts: [strip({ panels, folds: 'VV', across: mm(30) })],
    plate: 'back',
    angles: [['door', 'back', 90]],
  })
  const { standing } = foldCard(structure)
  expect(standing?.pose.get('flap')?.normal[2]).toBeCloseTo(-1, 12)
  expect(standing?.pose.get('door')?.normal[0]).toBeCloseTo(1, 12)
})

test('pieces that hang on nothing take no part', () => {
  const { closed, standing } = foldCard({ ...cards.bridge, ...withLoose() })
  expect([...(closed?.pose.keys() ?? [])]).not.toContain('loose')
  expect(closed?.order).not.toContain('loose')
  expect(standing?.pose.get('loose')).toBeUndefined()
})

function withLoose() {
  const loose = sheet('loose', mm(200), mm(200))
  return {
    pieces: [...cards.bridge.pieces, ...loose.pieces],
    plates: [...loose.plates, ...cards.bridge.plates],
  }
}

test('what lies on a plate stands in front of it by its thickness, on its back behind it', () => {
  const thin = mm(0.2)
  const structure = card({
    parts: [
      sheet('card', mm(50), mm(50), mm(0.4)),
      sheet('tag', mm(20), mm(20), thin),
      sheet('label', mm(20), mm(20), thin),
      sheet('liner', mm(50), mm(50), thin),
    ],
    bonds: [
      stuck('tag', 'card', zero, zero, { height: mm(1) }),
      stuck('label', 'card', mm(10), mm(10), { height: mm(1) }),
      stuck('liner', 'card', mm(50), zero, { side: 'back', over: true }),
    ],
    plate: 'card',
  })
  const { standing } = foldCard(structure)
  const depth = (name: string) => standing?.pose.get(name)?.origin[2] ?? Number.NaN
  expect(depth('tag') - depth('card')).toBeCloseTo(0.2 + 1 + 0.1, 9)
  // The label is stuck on last and partly lies on the tag.
  expect(depth('label') - depth('tag')).toBeCloseTo(0.2, 9)
  expect(depth('liner') - depth('card')).toBeCloseTo(-0.3, 9)
})
