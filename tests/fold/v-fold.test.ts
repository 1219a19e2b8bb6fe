import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { same } from '../../src/length/length.ts'
import { cardOf, check, measure } from '../card/block.ts'
import { inSpace, troublesIn } from './checker.ts'
import { layerTroublesIn } from './layer-checker.ts'

const inch = 25.4
const block = (lines: string, closed = '5 x 7 in') => `fold: v-fold\nclosed: ${closed}\n${lines}`

/** A point of the right wing, from the apex across and up, seen from the apex of the back: away from the fold, and along it. */
function onBack(text: string, across: number, up: number, way: 'closed' | 'standing') {
  const card = cardOf(text)
  const proof = foldCard(card.structure)
  expect(proof.findings).toEqual([])
  const lengths = (name: string) => {
    const value = card.names.lookup([name], { start: 0, end: 0 })
    return value.kind === 'length' ? value.value.valueOf() : Number.NaN
  }
  const pose = proof[way]?.pose
  const [back, wing] = [pose?.get('back'), pose?.get('right wing')]
  if (!back || !wing) throw new Error('no pose')
  const apex = inSpace(back, [card.closed.width.valueOf(), lengths('apex')])
  const point = inSpace(wing, [lengths('wing') + across * inch, lengths('tab') + up * inch])
  const by = point.map((x, i) => x - (apex[i] ?? 0))
  const along = (axis: readonly number[]) => by.reduce((sum, x, i) => sum + x * (axis[i] ?? 0), 0) / inch
  return [along(back.right), along(back.up), along(back.normal)].map((x) => x + 0)
}

// By hand: glue lines at 45° and a straight base (90°), so the crease between the wings lies at 135° when the card is
// shut: 3 in of it reach 3/√2 away from the fold and as far down. The wing's outer top corner is 2/√2 further out and up.
describe('a straight piece on glue lines at 45°', () => {
  const text = block('apex: 3 in\nrun: 2 in\nrise: 2 in\nwing: 2 in\nheight: 3 in\ntab: 1/2 in')
  const root = Math.SQRT1_2
  test.each([
    ['tip', 0, 3, [3 * root, -3 * root]],
    ['shoulder', 2, 3, [5 * root, -root]],
    ['foot', 2, 0, [2 * root, 2 * root]],
  ] as const)('shut, its %s lies where it was worked out', (_, across, up, [out, along]) => {
    const [x = 0, y = 0, z = 0] = onBack(text, across, up, 'closed')
    expect(x).toBeCloseTo(out, 3)
    expect(y).toBeCloseTo(along, 3)
    expect(Math.abs(z)).toBeLessThan(0.1)
  })

  test('open, it stands upright', () => {
    const [x = 0, y = 0, z = 0] = onBack(text, 0, 3, 'standing')
    expect(x).toBeCloseTo(0, 1)
    expect(y).toBeCloseTo(0, 1)
    expect(z).toBeCloseTo(3, 1)
  })

  test('is a rectangle with a level base and a notch between the tabs', () => {
    const card = cardOf(text)
    expect(measure(card, 'wings.size')).toBe('4 × 3 1/2 in')
    expect([
      measure(card, 'wings.levels'),
      measure(card, 'wings.uprights'),
      measure(card, 'wings.slants'),
    ]).toEqual(['1/2 in', '2 in', 'none'])
    // The tab would reach the fold if its lower edge ended 1/2 in from the middle; it ends a mark before.
    const notch = card.structure.pieces[1]?.cuts.map(({ to }) => Math.round((to.x.valueOf() / inch) * 16))
    expect(notch).toEqual([32 - 9, 32 + 9])
  })
})

// cos g = 3/5 and cos s = 5/13, so open flat cos p = cos s / cos g = 25/39, and 2 in of crease lean back by 2 · 25/39.
test('a piece whose base rises leans back by as much', () => {
  const text = block('apex: 2 in\nrun: 2 in\nrise: 1 1/2 in\nwing: 1 1/2 in\nlift: 5/8 in\nheight: 2 in')
  const [x = 0, y = 0, z = 0] = onBack(text, 0, 2, 'standing')
  expect(x).toBeCloseTo(0, 1)
  expect(y).toBeCloseTo((2 * 25) / 39, 1)
  expect(z).toBeCloseTo(2 * Math.sqrt(1 - (25 / 39) ** 2), 1)
  const card = cardOf(text)
  expect(measure(card, 'wings.slants')).toBe(
    'from the left edge at 1 1/8 in to the point 1 1/2 in across and 1/2 in up and from the point 1 1/2 in across and 1/2 in up to the right edge at 1 1/8 in',
  )
})

test.each(['7 x 5 in', 'A6', '5 x 5 in'])(
  'with its spine at the top of %s it shuts, stands and is whole',
  (closed) => {
    for (const unit of ['in', 'mm'] as const) {
      const card = cardOf(block('spine: top', closed), { unit })
      const { structure } = card
      const proof = foldCard(structure)
      expect(proof.findings).toEqual([])
      expect(proof.closed && same(proof.closed.size.width, card.closed.width)).toBe(true)
      expect(proof.closed && same(proof.closed.size.height, card.closed.height)).toBe(true)
      expect(proof.closed && layerTroublesIn(structure, proof.closed)).toEqual([])
      for (const pose of [proof.closed?.pose, proof.between(0.3), proof.standing?.pose])
        expect(pose && troublesIn(structure, pose, { gap: 1e-5, thickness: 3 })).toEqual([])
    }
  },
)

const told = (lines: string) => {
  const { findings } = check(block(lines))
  return findings.map(({ rule, message, suggestion }) => [rule, message, suggestion])
}

test('what sticks out of the shut card, or would tear, is told with what works', () => {
  // 6 in of crease come 6/√2 = 4.24 in down and out; the shoulder 2 5/16/√2 = 1.64 in further out: 5.88 in.
  expect(told('height: 6 in')).toEqual([
    [
      'impossible-size',
      'Shut, the wings reach 5 15/16 in from the fold, beyond panels of 5 in',
      'Make the height at most 3 15/16 in',
    ],
  ])
  // 2 3/4/√2 = 1.94 in.
  expect(told('height: 2 3/4 in\napex: 1 in')).toEqual([
    [
      'impossible-size',
      'Shut, the tip of the wings lies 2 in below the point of the V, where the card has 1 in',
      'Make the apex at least 2 in',
    ],
  ])
  expect(told('lift: 2 1/2 in')).toEqual([
    [
      'impossible-size',
      'With a lift of 2 1/2 in the piece is a narrower V than its glue lines, and would tear when the card is opened flat',
      'Make the lift at most 2 1/4 in',
    ],
  ])
})

test('a turn that is all but a plain fraction does not make the card too fine to fold', () => {
  const lengths = { apex: 16, run: 41, rise: 24, wing: 37, lift: 1, height: 12, tab: 4 }
  const lines = Object.entries(lengths).map(([key, n]) => `${key}: ${n}/16 in`)
  const { card } = check(block(lines.join('\n'), '4 x 4 in'))
  expect(card && foldCard(card.structure).findings).toEqual([])
})

/** Lengths in marks of the ruler, of which about every third makes a card. */
const marks = fc.record({
  closed: fc.tuple(fc.integer({ min: 64, max: 128 }), fc.integer({ min: 64, max: 128 })),
  spine: fc.constantFrom('left', 'top'),
  apex: fc.integer({ min: 16, max: 48 }),
  run: fc.integer({ min: 8, max: 48 }),
  rise: fc.integer({ min: 8, max: 48 }),
  wing: fc.integer({ min: 12, max: 40 }),
  lift: fc.constantFrom(0, 1, 3, 7, 12),
  height: fc.integer({ min: 12, max: 40 }),
  tab: fc.integer({ min: 4, max: 10 }),
})

test('whatever is not refused shuts, opens flat and is whole, in fractions of every kind', () => {
  let made = 0
  fc.assert(
    fc.property(marks, ({ closed: [w, h], spine, ...lengths }) => {
      const lines = Object.entries(lengths).map(([key, n]) => `${key}: ${n}/16 in`)
      const { card } = check(block([`spine: ${spine}`, ...lines].join('\n'), `${w}/16 in x ${h}/16 in`))
      fc.pre(card !== undefined)
      if (!card) return
      made++
      const { closed, standing, findings } = foldCard(card.structure)
      expect(findings).toEqual([])
      expect(closed && same(closed.size.width, card.closed.width)).toBe(true)
      expect(closed && same(closed.size.height, card.closed.height)).toBe(true)
      for (const pose of [closed?.pose, standing?.pose])
        expect(pose && troublesIn(card.structure, pose, { gap: 1e-5, thickness: 3 })).toEqual([])
    }),
    { numRuns: 40 },
  )
  expect(made).toBeGreaterThan(20)
})
