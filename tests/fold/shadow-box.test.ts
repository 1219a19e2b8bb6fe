import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { same, toMm } from '../../src/length/length.ts'
import { cardOf, check, measure } from '../card/block.ts'
import { inSpace, troublesIn } from './checker.ts'
import { layerTroublesIn } from './layer-checker.ts'

const inch = 25.4
const block = (hinged: string, more = '') =>
  `fold: shadow box\nclosed: 5 x 7 in\ndepth: 1 in\nrim: 3/4 in\ntab: 1/2 in\nhinged: ${hinged}\n${more}`

// By hand: return 1/2, wall 1, frame 5, wall 1, return 1/2 across; the same round a frame 7 high. The returns above and
// below end 1/2 in short of the frame at both ends, where those at the sides lie.
test('is cut as it was worked out by hand', () => {
  const card = cardOf(block('no'))
  const said = ['base.size', 'base.uprights', 'base.levels', 'back.size']
  expect(said.map((name) => measure(card, name))).toEqual([
    '8 × 10 in',
    '1/2, 1 1/2, 6 1/2 and 7 1/2 in',
    '1/2, 1 1/2, 8 1/2 and 9 1/2 in',
    '5 × 7 in',
  ])
  const upper = card.structure.plates.find(({ name }) => name === 'upper return')
  expect(upper?.outline.map(({ x }) => Math.round((x.valueOf() / inch) * 16) / 16).toSorted()).toEqual([
    2, 2, 6, 6,
  ])
})

test('stands as deep as its walls, its frame over its back, and does not move', () => {
  const { structure } = cardOf(block('no'))
  const { closed, standing, findings, freedom } = foldCard(structure)
  expect([findings, freedom, closed?.isFlat]).toEqual([[], 0, false])
  expect(standing?.depth).toBeCloseTo(inch, 6)
  const [frame, back] = ['frame', 'back'].map((name) => standing?.pose.get(name))
  if (!frame || !back) throw new Error('it does not stand')
  // Seen from the front, the lower left corner of the back is behind the lower right one of the frame's sheet.
  const [corner, behind] = [inSpace(frame, [6.5 * inch, 1.5 * inch]), inSpace(back, [0, 0])]
  expect(corner[0]).toBeCloseTo(behind[0], 6)
  expect(corner[1]).toBeCloseTo(behind[1], 6)
  expect(Math.abs(corner[2] - behind[2] - inch)).toBeLessThan(1)
  expect(troublesIn(structure, standing?.pose ?? new Map(), { gap: 1e-5, thickness: 1.5 })).toEqual([])
})

// Hinged it is 5 in wide flat: a frame of 4 in swung to the side by its depth of 1 in.
describe('hinged', () => {
  const card = cardOf(block('yes'))
  const { structure } = card
  const proof = foldCard(structure)

  test('is one strip', () => {
    const said = ['base.size', 'base.scores', 'back.size']
    expect(said.map((name) => measure(card, name))).toEqual([
      '7 × 7 in',
      '1/2, 1 1/2, 5 1/2 and 6 1/2 in',
      '4 × 7 in',
    ])
  })

  test('lies flat, swings up square and is whole all the way', () => {
    expect(proof.findings).toEqual([])
    expect(proof.freedom).toBe(1)
    expect(proof.closed && same(proof.closed.size.width, card.closed.width)).toBe(true)
    expect(proof.closed && same(proof.closed.size.height, card.closed.height)).toBe(true)
    expect(proof.closed && layerTroublesIn(structure, proof.closed)).toEqual([])
    expect(proof.closed && toMm(proof.closed.thickness)).toBeLessThan(3)
    expect([proof.standing?.width, proof.standing?.depth].map((x) => Math.round((x ?? 0) / inch))).toEqual([
      4, 1,
    ])
    for (const pose of [proof.closed?.pose, proof.between(0.3), proof.standing?.pose])
      expect(pose && troublesIn(structure, pose, { gap: 1e-5, thickness: 1.5 })).toEqual([])
  })
})

test('a rim, a depth or a return that leaves no room is refused, with the most that works', () => {
  const told = (hinged: string, line: string) => {
    const [key = ''] = line.split(':')
    const { findings } = check(block(hinged).replace(new RegExp(`^${key}:.*$`, 'm'), line))
    return findings.map(({ message, suggestion }) => [message, suggestion])
  }
  expect(told('no', 'rim: 3 in')).toEqual([
    ['A rim of 3 in leaves no window', 'Make the rim at most 2 7/16 in'],
  ])
  expect(told('yes', 'depth: 4 in')).toEqual([
    [
      'A hinged box 4 in deep leaves a frame 1 in wide, too narrow for its window',
      'Make the depth at most 3 7/16 in',
    ],
  ])
  // However shallow it is, the frame of a hinged box is a mark narrower than the card.
  expect(told('yes', 'rim: 2 1/2 in')).toEqual([
    ['A rim of 2 1/2 in leaves no window', 'Make the rim at most 2 7/16 in'],
  ])
  expect(told('no', 'tab: 2 1/2 in')).toEqual([
    ['Returns of 2 1/2 in do not fit side by side on the back', 'Make the tab at most 2 7/16 in'],
  ])
})
