import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inches, mm, type Size } from '../../../src/length/length.ts'
import { sheetSize } from '../../../src/length/paper.ts'
import { smallestBoxes } from '../../../src/workshop/fit/cutting/boxes.ts'
import { cutFrom, type Wanted } from '../../../src/workshop/fit/cutting/cut-from.ts'
import { selectionsOf } from '../../../src/workshop/fit/cutting/selections.ts'
import data from '../../data/cutting.json' with { type: 'json' }
import { comesOut, type Rect } from './cutting-brute.ts'
import { mistakesIn } from './cutting-checker.ts'

const size = (width: number, height: number, unit = 'mm'): Size =>
  unit === 'in' ? { width: inches(width), height: inches(height) } : { width: mm(width), height: mm(height) }
const alike = (piece: Size, count: number, turns: boolean): Wanted[] => [
  { name: 'card', size: piece, count, turns },
]

/** Cuts, and has the layouts checked. */
function cut(wanted: readonly Wanted[], sheets: readonly Size[]): string {
  const cutting = cutFrom(wanted, sheets)
  if (cutting.is === 'cut') expect(mistakesIn(cutting.layouts, wanted, sheets)).toEqual([])
  return cutting.is
}

describe.each(data.cases)('$id', ({ sheet: [w = 0, h = 0], piece: [a = 0, b = 0], unit, ...expected }) => {
  test.each([
    ['turned', true, expected.guillotine_rotated],
    ['upright', false, expected.guillotine_fixed],
  ] as const)('%s, as many as published come out and not one more', (_, turns, count) => {
    const sheets = [size(w, h, unit)]
    expect(cut(alike(size(a, b, unit), count, turns), sheets)).toBe('cut')
    expect(['too much', 'no way']).toContain(cut(alike(size(a, b, unit), count + 1, turns), sheets))
  })
})

test.each(data.pinwheel)('$id: no cut from edge to edge parts it', ({ sheet, piece, unit, ...expected }) => {
  const [w = 0, h = 0] = sheet
  const [a = 0, b = 0] = piece
  const pieces = (n: number) => alike(size(a, b, unit), n, true)
  expect(cut(pieces(expected.non_guillotine_rotated), [size(w, h, unit)])).toBe('no way')
  expect(cut(pieces(expected.guillotine_rotated), [size(w, h, unit)])).toBe('cut')
})

// By hand: two upright and two lying 1 × 2 round a 1 × 1 fill a 3 × 3, but no straight line misses them all. May they
// be turned, three lie on each other beside the fourth, which has the square at its end.
test('a pinwheel round a square is cut from 3 × 3 only when its pieces may be turned', () => {
  const wanted = (turns: boolean): Wanted[] => [
    { name: 'upright', size: size(1, 2), count: 2, turns },
    { name: 'lying', size: size(2, 1), count: 2, turns },
    { name: 'hub', size: size(1, 1), count: 1, turns },
  ]
  expect(cut(wanted(false), [size(3, 3)])).toBe('no way')
  expect(cut(wanted(false), [size(3, 4)])).toBe('cut')
  expect(cut(wanted(true), [size(3, 3)])).toBe('cut')
})

test.each(data.one_of_each)(
  '$id: the most that different pieces fill of one sheet is as published',
  (one) => {
    const [width = 0, height = 0] = one.sheet
    const kinds = one.pieces_lw.map(([w = 0, h = 0]) => ({ width: w, height: h, count: 1, turns: false }))
    const selections = selectionsOf(kinds.map(() => 1))
    // Paper for all of them, of which one sheet is the only one they lie on: nothing is dropped for want of paper.
    const boxes = smallestBoxes(kinds, selections, [{ width, height }, ...kinds])
    const filled = boxes.map((front, n) =>
      front.some((box) => box.width <= width && box.height <= height)
        ? selections
            .digits(n)
            .reduce((sum, k, i) => sum + k * (kinds[i]?.width ?? 0) * (kinds[i]?.height ?? 0), 0)
        : 0,
    )
    expect(Math.max(...filled)).toBe(one.one_of_each_guillotine_fixed)
  },
)

const side = fc.integer({ min: 1, max: 7 })
const rect: fc.Arbitrary<Rect> = fc.record({ width: side, height: side, turns: fc.boolean() })
const sheet = fc.tuple(fc.integer({ min: 3, max: 11 }), fc.integer({ min: 3, max: 11 }))

test('agrees with trying every cut, and its layouts can be cut', () => {
  let [came, stayed] = [0, 0]
  fc.assert(
    fc.property(
      fc.array(rect, { minLength: 1, maxLength: 6 }),
      fc.array(sheet, { minLength: 1, maxLength: 3 }),
      (rects, sheets) => {
        const wanted = rects.map(({ width, height, turns }, i) => ({
          name: `piece ${i}`,
          size: size(width, height),
          count: 1,
          turns,
        }))
        const out = comesOut(rects, sheets)
        out ? came++ : stayed++
        expect(
          cut(
            wanted,
            sheets.map(([w, h]) => size(w, h)),
          ) === 'cut',
        ).toBe(out)
      },
    ),
    { numRuns: 400 },
  )
  // Both answers must come up, or the test says little.
  expect(Math.min(came, stayed)).toBeGreaterThan(40)
})

test('several of a piece are the same as as many pieces', () => {
  fc.assert(
    fc.property(rect, fc.integer({ min: 1, max: 5 }), rect, sheet, (one, count, other, [w, h]) => {
      const piece = (r: Rect, name: string, n: number) => ({
        name,
        size: size(r.width, r.height),
        count: n,
        turns: r.turns,
      })
      const wanted = [piece(one, 'one', count), piece(other, 'other', 1)]
      const out = comesOut([...Array.from({ length: count }, () => one), other], [[w, h]])
      expect(cut(wanted, [size(w, h)]) === 'cut').toBe(out)
    }),
    { numRuns: 150 },
  )
})

test('a sheet that ends between two marks of the ruler is cut to its own edge', () => {
  const a5 = sheetSize('A5')
  const wanted = alike({ width: inches(45, 16), height: inches(65, 16) }, 4, true)
  expect(a5 && cut(wanted, [a5])).toBe('cut')
  expect(a5 && cut(alike({ width: inches(47, 16), height: inches(65, 16) }, 4, true), [a5])).toBe('no way')
})

test('as few scraps are used as will do', () => {
  const cutting = cutFrom(alike(size(4, 4), 2, true), [size(4, 4), size(5, 5), size(8, 4)])
  expect(cutting.is === 'cut' && cutting.layouts.map((layout) => layout.sheet)).toEqual([2])
})

test('what is in the way is told: one piece, too little paper, or more pieces than can be gone through', () => {
  expect(cutFrom(alike(size(9, 2), 1, false), [size(8, 12)])).toMatchObject({ is: 'too large' })
  expect(cut(alike(size(9, 2), 1, true), [size(8, 12)])).toBe('cut')
  expect(cut(alike(size(4, 4), 7, true), [size(8, 12)])).toBe('too much')
  const many = Array.from({ length: 12 }, (_, i) => ({
    name: `piece ${i}`,
    size: size(10 + i, 20),
    count: 1,
    turns: true,
  }))
  expect(cutFrom(many, [size(1000, 1000)])).toEqual({ is: 'too many', pieces: 12 })
  const start = performance.now()
  expect(cut(many.slice(1), [size(70, 66)])).not.toBe('too many')
  expect(performance.now() - start).toBeLessThan(30_000)
})
