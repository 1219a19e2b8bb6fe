import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Side, sheetSides } from '../../../src/publish/impose/sheet-order.ts'

/**
 * What a reader finds who takes the printed sheets, lays them on one another with the first outermost, folds the stack
 * once, and turns leaf after leaf. Each sheet is a leaf before the fold and a leaf behind it.
 */
function folded(sides: readonly Side[]): (number | null)[] {
  const sheets = Array.from({ length: sides.length / 2 }, (_, i) => ({
    front: sides[2 * i] as Side,
    back: sides[2 * i + 1] as Side,
  }))
  // Up to the staples the right half of a front is read first, and then what is behind it: the left half of the back.
  const before = sheets.flatMap(({ front, back }) => [front.right, back.left])
  const behind = sheets.toReversed().flatMap(({ front, back }) => [back.right, front.left])
  return [...before, ...behind]
}

test('a folded stack of sheets reads from the first page to the last, and then come the empty ones', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 120 }), (pages) => {
      const read = folded(sheetSides(pages, 'booklet'))
      expect(read).toHaveLength(Math.ceil(pages / 4) * 4)
      expect(read.slice(0, pages)).toEqual(Array.from({ length: pages }, (_, i) => i + 1))
      expect(read.slice(pages).every((page) => page === null)).toBe(true)
    }),
  )
})

test('eight pages lie as binders lay them: the two of a side add up to nine', () => {
  expect(sheetSides(8, 'booklet')).toEqual([
    { left: 8, right: 1 },
    { left: 2, right: 7 },
    { left: 6, right: 3 },
    { left: 4, right: 5 },
  ])
})

test('pairs stand in their order, and an odd last page alone on the left', () => {
  expect(sheetSides(3, 'pairs')).toEqual([
    { left: 1, right: 2 },
    { left: 3, right: null },
  ])
  expect(sheetSides(0, 'pairs')).toEqual([])
  expect(sheetSides(0, 'booklet')).toEqual([])
})
