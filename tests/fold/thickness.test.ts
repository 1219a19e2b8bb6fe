import { expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { mm, toMm, zero } from '../../src/length/length.ts'
import { card, pieceOf, point, rectangle, sheet, strip, stuck } from './build.ts'
import { bridge } from './cards.ts'

const base = strip({
  panels: [
    ['front', mm(50)],
    ['back', mm(50)],
  ],
  folds: 'V',
  across: mm(40),
  caliper: mm(3),
})

const thickness = (structure: Parameters<typeof foldCard>[0]) => {
  const { closed, findings } = foldCard(structure)
  expect(findings).toEqual([])
  return closed && toMm(closed.thickness)
}

test('sheets on each other add up, sheets beside each other do not', () => {
  const two = (x: number) =>
    card({
      parts: [base, sheet('a', mm(20), mm(20), mm(1)), sheet('b', mm(20), mm(20), mm(2))],
      bonds: [stuck('a', 'back', mm(50), zero), stuck('b', 'back', mm(50 + x), zero)],
      plate: 'back',
    })
  expect(thickness(two(0))).toBe(3 + 3 + 1 + 2)
  expect(thickness(two(19))).toBe(3 + 3 + 1 + 2)
  expect(thickness(two(20))).toBe(3 + 3 + 2)
})

test('foam counts once where both of its pieces are', () => {
  const raised = card({
    parts: [base, sheet('a', mm(20), mm(20), mm(1))],
    bonds: [stuck('a', 'back', mm(50), zero, { height: mm(2) })],
    plate: 'back',
  })
  expect(thickness(raised)).toBe(3 + 3 + 1 + 2)
})

test('a window lets what is in it lie a sheet lower', () => {
  const frame = {
    pieces: [pieceOf('frame', { width: mm(40), height: mm(40) }, mm(1))],
    plates: [
      {
        name: 'frame',
        piece: 'frame',
        outline: rectangle(zero, zero, mm(40), mm(40)),
        holes: [rectangle(mm(10), mm(10), mm(20), mm(20))],
      },
    ],
    hinges: [],
  }
  const framed = (size: number) =>
    card({
      parts: [base, frame, sheet('picture', mm(size), mm(size), mm(5))],
      bonds: [stuck('frame', 'back', mm(50), zero), stuck('picture', 'back', mm(60), mm(10))],
      plate: 'back',
    })
  expect(thickness(framed(20))).toBe(3 + 3 + 5)
  expect(thickness(framed(21))).toBe(3 + 3 + 5 + 1)
})

test('slanted corners meet only where they meet', () => {
  const corner = (name: string, flip: boolean) => ({
    pieces: [pieceOf(name, { width: mm(20), height: mm(20) }, mm(1))],
    plates: [
      {
        name,
        piece: name,
        outline: flip
          ? [point(mm(20), zero), point(mm(20), mm(20)), point(zero, mm(20))]
          : [point(zero, zero), point(mm(20), zero), point(zero, mm(20))],
        holes: [],
      },
    ],
    hinges: [],
  })
  const halves = (shift: number) =>
    card({
      parts: [base, corner('a', false), corner('b', true)],
      bonds: [stuck('a', 'back', mm(50), zero), stuck('b', 'back', mm(50 - shift), zero)],
      plate: 'back',
    })
  expect(thickness(halves(0))).toBe(3 + 3 + 1)
})

test('a bridge: the legs are in two layers only, with its strips on top', () => {
  // Left to right: tab; leg; floor; floor with right leg and right tab on it. Strips lie on all of it.
  expect(thickness(bridge({ strips: 2, caliper: 0.5 }))).toBe(4 * 0.5)
  expect(thickness(bridge({ strips: 2, caliper: 0.5, raise: 1.5 }))).toBe(4 * 0.5 + 1.5)
})
