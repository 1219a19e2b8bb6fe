import { expect, test } from 'vitest'
import { markText, slantsOf, slantText } from '../../src/card/slants.ts'
import { point } from '../../src/card/strip.ts'
import type { Fold } from '../../src/card/structure.ts'
import { inches } from '../../src/length/length.ts'
import { wordingOf } from '../../src/wording/wording.ts'

const at = (x: number, y: number) => point(inches(x), inches(y))
const crease = (x1: number, y1: number, x2: number, y2: number, fold: Fold = 'valley') => ({
  between: ['one', 'other'] as const,
  line: { from: at(x1, y1), to: at(x2, y2) },
  fold,
})
const size = { width: inches(6), height: inches(4) }
const english = wordingOf('en', 'in')

test('a crease that is neither upright nor level is a slant, whichever end it is given from', () => {
  const slants = slantsOf([
    crease(0, 2, 6, 2),
    crease(3, 4, 0, 2, 'mountain'),
    crease(5, 0, 5, 4),
    crease(0, 0, 6, 4),
  ])
  expect(slants.map((s) => [slantText(s, size, english), s.fold, s.side])).toEqual([
    ['from the lower left corner to the top right corner', 'valley', 'back'],
    ['from the left edge at 2 in to the top edge at 3 in', 'mountain', 'face'],
  ])
})

test('a mark is said as a hand finds it', () => {
  const said = ([x, y]: [number, number]) => markText(at(x, y), size, english)
  expect(said([6, 1])).toBe('the right edge at 1 in')
  expect(said([2.5, 0])).toBe('the lower edge at 2 1/2 in')
  expect(said([2, 1])).toBe('the point 2 in across and 1 in up')
})
