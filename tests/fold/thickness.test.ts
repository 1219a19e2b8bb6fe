import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import type { Pad, Polygon, Structure } from '../../src/card/structure.ts'
import type { Closed } from '../../src/fold/pose.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { mm, same, toMm, zero } from '../../src/length/length.ts'
import { cardOf } from '../card/block.ts'
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

const shut = (structure: Structure): Closed => {
  const { closed, findings } = foldCard(structure)
  expect(findings).toEqual([])
  if (!closed) throw new Error('does not shut')
  return closed
}

/** Twice the area, by the shoelace formula. */
const area = (outline: readonly (readonly [number, number])[]): number =>
  outline.reduce((sum, [x, y], i) => {
    const [px, py] = outline.at(i - 1) ?? [x, y]
    return sum + (px * y - x * py)
  }, 0)

/** How thick the card is at a point, in mm from its lower left corner: 0 beside it. */
const thicknessAt = ({ map }: Closed, x: number, y: number): number => {
  const here = map.filter(({ outline }) =>
    outline.every(([bx, by], i) => {
      const [ax, ay] = outline.at(i - 1) ?? [bx, by]
      return (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0
    }),
  )
  expect(here.length).toBeLessThan(2)
  return here[0] ? toMm(here[0].thickness) : 0
}

describe('the thickness place by place', () => {
  const pad = (
    onto: string,
    left: number,
    right: number,
    height: number,
    side: Pad['side'] = 'face',
  ): Pad => ({
    name: 'letter',
    onto,
    side,
    outline: rectangle(mm(left), mm(10), mm(right - left), mm(10)),
    height: mm(height),
  })
  // The front is 0 to 50, the back 50 to 100; shut, the front's x lies on the back's 100 - x.
  const lettered = (...pads: Pad[]): Closed => shut({ ...card({ parts: [base], plate: 'back' }), pads })

  test('letters on both facing sides add up where they meet', () => {
    const beside = lettered(pad('front', 5, 15, 1.5), pad('back', 60, 70, 2))
    expect(toMm(beside.thickness)).toBe(3 + 3 + 2)
    expect([thicknessAt(beside, 40, 15), thicknessAt(beside, 15, 15)]).toEqual([7.5, 8])
    expect([thicknessAt(beside, 40, 25), thicknessAt(beside, 25, 15), thicknessAt(beside, 51, 15)]).toEqual([
      6, 6, 0,
    ])
    const meeting = lettered(pad('front', 5, 15, 1.5), pad('back', 83, 87, 2))
    expect(toMm(meeting.thickness)).toBe(3 + 3 + 1.5 + 2)
    // The letter of the front covers 85 to 95 of the back, 35 to 45 of the card.
    expect([34, 36, 40].map((x) => thicknessAt(meeting, x, 15))).toEqual([8, 9.5, 7.5])
  })

  test('letters on the outside count too, and lift nothing inside', () => {
    const closed = lettered(pad('front', 5, 15, 1.5, 'back'), pad('back', 60, 70, 2, 'back'))
    expect([thicknessAt(closed, 40, 15), thicknessAt(closed, 15, 15)]).toEqual([7.5, 8])
    // The front's middle is half a sheet over the sheet and the letter under it.
    const z = (name: string) => closed.pose.get(name)?.origin[2]
    expect([z('back'), z('front')]).toEqual([2 + 1.5, 2 + 3 + 1.5])
    const inside = lettered(pad('back', 60, 70, 2))
    expect([inside.pose.get('back')?.origin[2], inside.pose.get('front')?.origin[2]]).toEqual([
      1.5,
      3 + 2 + 1.5,
    ])
  })

  test('foam lifts a layer wherever it lies on what it is stuck on, and a window lets a letter through', () => {
    const frame = {
      pieces: [pieceOf('frame', { width: mm(40), height: mm(30) }, mm(1))],
      plates: [
        {
          name: 'frame',
          piece: 'frame',
          outline: rectangle(zero, zero, mm(40), mm(30)),
          holes: [rectangle(mm(10), mm(5), mm(20), mm(20))],
        },
      ],
      hinges: [],
    }
    const structure = card({
      parts: [base, frame],
      bonds: [stuck('frame', 'back', mm(55), mm(5), { height: mm(2) })],
      plate: 'back',
    })
    const closed = shut({ ...structure, pads: [pad('back', 70, 80, 2.5)] })
    // Frame: 3 + 3 + 1 + 2. In its window, from 65 to 85, the letter: 3 + 3 + 2.5. Beside both: 3 + 3.
    expect([10, 16, 25, 47].map((x) => thicknessAt(closed, x, 15))).toEqual([9, 6, 8.5, 6])
    expect(toMm(closed.thickness)).toBe(9)
  })

  test('letters on a layer that covers a letter', () => {
    const closed = shut({
      ...card({
        parts: [base, sheet('strip', mm(40), mm(20), mm(1))],
        bonds: [stuck('strip', 'back', mm(55), mm(5), { height: mm(1) })],
        plate: 'back',
      }),
      pads: [pad('strip', 10, 20, 0.5), pad('front', 20, 30, 0.25)],
    })
    // The strip's letter is 65 to 75 of the back; the front's covers 70 to 80.
    expect([17, 22, 27, 33].map((x) => thicknessAt(closed, x, 16))).toEqual([8.5, 8.75, 8.25, 8])
  })

  test('a triangle is mapped by its slanting edge', () => {
    const corner: Polygon = [point(zero, zero), point(mm(40), zero), point(zero, mm(40))]
    const piece = {
      pieces: [pieceOf('corner', { width: mm(40), height: mm(40) }, mm(1))],
      plates: [{ name: 'corner', piece: 'corner', outline: corner, holes: [] }],
      hinges: [],
    }
    const closed = shut(
      card({ parts: [base, piece], bonds: [stuck('corner', 'back', mm(50), zero)], plate: 'back' }),
    )
    expect([thicknessAt(closed, 19, 20), thicknessAt(closed, 21, 20), thicknessAt(closed, 1, 38)]).toEqual([
      7, 6, 7,
    ])
  })

  test.each([...foldStyles.values()])('$name: each plate is on the map with all its area', ({ starter }) => {
    const { structure } = cardOf(starter)
    const closed = shut(structure)
    if (!closed.isFlat) {
      expect(closed.map).toEqual([])
      return
    }
    for (const { name, outline, holes } of structure.plates) {
      const whole = [outline, ...holes].map((ring) =>
        Math.abs(area(ring.map(({ x, y }) => [toMm(x), toMm(y)]))),
      )
      const [own = 0, ...windows] = whole
      const mapped = closed.map
        .filter(({ sheets }) => sheets.some(({ plate }) => plate === name))
        .reduce((sum, cell) => sum + area(cell.outline), 0)
      expect(mapped, name).toBeCloseTo(own - windows.reduce((a, b) => a + b, 0), 4)
    }
    for (const { sheets, outline } of closed.map) {
      const places = sheets.map(({ plate }) => closed.order.indexOf(plate))
      expect(places).toEqual([...places].sort((a, b) => a - b))
      expect(area(outline)).toBeGreaterThan(0)
    }
    expect(closed.map.some(({ thickness: t }) => same(t, closed.thickness))).toBe(true)
  })
})
