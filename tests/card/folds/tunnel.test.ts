import { describe, expect, test } from 'vitest'
import type { Structure } from '../../../src/card/structure.ts'
import { foldCard } from '../../../src/fold/prove.ts'
import { formatSize } from '../../../src/length/format.ts'
import { inches } from '../../../src/length/length.ts'
import { cardOf, check, measure } from '../block.ts'

const inch = 25.4
const block = (more = '') => `fold: tunnel\nclosed: 5 x 7 in\npleat: 3/4 in\nrim: 1 in\n${more}`
const card = cardOf(block())
/** As thin as nothing, so that the poses are those of the sheets' middles. */
const thin = (more = '') => cardOf(block(`base: {caliper: 0.001 mm}\n${more}`)).structure

/** By hand: frames 1/16 narrower on both sides; sides of three tabs and two times two pleats. */
test('the pieces of three frames of 5 × 7 with pleats of 3/4', () => {
  expect(['base', 'frame', 'sides'].map((piece) => measure(card, `${piece}.size`))).toEqual([
    '5 × 7 in',
    '4 7/8 × 7 in',
    '5 1/4 × 7 in',
  ])
  expect(['frame', 'sides'].map((piece) => measure(card, `${piece}.count`))).toEqual(['2', '2'])
  expect(measure(card, 'sides.valleys')).toBe('3/4, 2 1/4 and 3 3/4 in')
  expect(measure(card, 'sides.mountains')).toBe('1 1/2, 3 and 4 1/2 in')
  const frame = card.structure.pieces.find(({ name }) => name === 'frame')
  const xs = frame?.cuts.flatMap(({ from }) => [from.x, from.y]) ?? []
  expect(new Set(xs.map((x) => x.div(inches(1)).toFraction(true)))).toEqual(new Set(['1', '3 7/8', '6']))
})

test.each([2, 3, 4, 5])(
  '%i frames shut to the size of the backdrop, with the sides behind the rims',
  (frames) => {
    const { closed, findings, freedom } = foldCard(cardOf(block(`frames: ${frames}`)).structure)
    expect(findings).toEqual([])
    expect(closed && formatSize(closed.size, 'in')).toBe('5 × 7 in')
    // Two frames that two pairs of pleats join go out, sideways and aslant.
    expect(freedom).toBe(3 * (frames - 1))
    const shown = closed?.order.filter((name) => name.startsWith('frame') || name === 'backdrop')
    const names = Array.from({ length: frames - 1 }, (_, i) => `frame ${i + 1}`)
    expect(shown).toEqual([...names, 'backdrop'])
    for (const { plate, left, size } of closed?.plates ?? [])
      if (/tab|pleat/.test(plate)) {
        const [from, to] = [left, left.add(size.width)]
        const pleat = inches(3, 4)
        expect(to.lte(pleat) || from.gte(inches(5).sub(pleat)), plate).toBe(true)
      }
  },
)

/** The pleats turned so far out of the frames, in every gap alike. */
const turnedOut = (structure: Structure, degrees: number): Structure => ({
  ...structure,
  display: {
    ...structure.display,
    angles: structure.display.angles.map(({ hinge }) => ({
      hinge,
      degrees: hinge.every((name) => name.includes('pleat')) ? 180 - 2 * degrees : 180 - degrees,
    })),
  },
})

describe('pulled out', () => {
  test.each([20, 45, 60, 90])('with its pleats at %i°, each gap is 2·p·sin of that', (degrees) => {
    for (const frames of [2, 3, 4]) {
      const { standing, findings } = foldCard(turnedOut(thin(`frames: ${frames}`), degrees))
      expect(findings).toEqual([])
      const gap = 2 * 0.75 * inch * Math.sin((degrees * Math.PI) / 180)
      expect(standing?.depth).toBeCloseTo((frames - 1) * gap, 3)
      expect(standing?.width).toBeCloseTo(5 * inch, 3)
      // The window of one frame is straight before that of the next.
      const [one, next] = ['frame 1', frames > 2 ? 'frame 2' : 'backdrop'].map((name) =>
        standing?.pose.get(name),
      )
      if (!one || !next) throw new Error('no pose')
      const way = next.origin.map((x, i) => x - (one.origin[i] ?? 0))
      const across = way.reduce((sum, x, i) => sum + x * (next.right[i] ?? 0), 0)
      expect(across).toBeCloseTo(frames > 2 ? 0 : -inch / 16, 3)
    }
  })
})

test('a tab on the other side of its frame would have the strip run through it', () => {
  const turned = (tab: string): Structure => ({
    ...card.structure,
    bonds: card.structure.bonds.map((bond) =>
      bond.plate === tab ? { ...bond, side: bond.side === 'face' ? 'back' : 'face' } : bond,
    ),
  })
  expect(foldCard(turned('left tab 2')).findings.map(({ rule }) => rule)).toEqual(['layers-cross'])
})

// Of 4 7/8 in a window of 1/16 in at least: rims of 2 3/8 in. The rim may be narrower than the pleat by the creep.
test.each([
  ['rim: 3 in', 'Make the rim at most 2 3/8 in'],
  ['pleat: 3/4 in\nrim: 1/2 in', 'Make the rim at least 11/16 in'],
  ['pleat: 3 in', 'Make the pleat at most 2 1/4 in'],
  ['pleat: 3 in\nrim: 1 in', 'Make the pleat at most 1 1/16 in'],
  ['pleat: 1/16 in', 'Make the pleat at least 1/8 in'],
  ['creep: 0 in', 'Make the creep at least 1/16 in'],
  ['pleat: 3/4 in\ncreep: 3/4 in', 'Make the creep at most 11/16 in'],
])('%j is refused', (lengths, cure) => {
  const told = check(`fold: tunnel\nclosed: 5 x 7 in\n${lengths}`).findings
  expect(told.map(({ rule, suggestion }) => [rule, suggestion])).toEqual([['impossible-size', cure]])
})
