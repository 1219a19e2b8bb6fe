import { describe, expect, test } from 'vitest'
import { explodingBox } from '../../src/card/folds/exploding-box.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { inches, toMm } from '../../src/length/length.ts'
import { cardOf, check, measure } from '../card/block.ts'
import { inSpace, troublesIn } from './checker.ts'

const inch = 25.4
const block = (more = '', closed = '4 x 4 in') => `fold: exploding box\nclosed: ${closed}\n${more}`

test('a 12 × 12 sheet scored at 4 and 8 both ways makes a 4 in box (common practice, no source)', () => {
  const card = cardOf(block())
  expect(['base.size', 'base.uprights', 'base.levels'].map((name) => measure(card, name))).toEqual([
    '12 × 12 in',
    '4 and 8 in',
    '4 and 8 in',
  ])
  const { closed, standing, findings } = foldCard(card.structure)
  expect(findings).toEqual([])
  expect([closed?.size.width, closed?.size.height].map((x) => x && toMm(x) / inch)).toEqual([4, 4])
  expect(closed && Math.round((toMm(closed.thickness) / inch) * 10) / 10).toBe(4)
  // The walls of the box lie open at 15°, those of the nest at 40°.
  const radians = (degrees: number) => (degrees * Math.PI) / 180
  expect((standing?.width ?? 0) / inch).toBeCloseTo(4 + 8 * Math.cos(radians(15)), 2)
  expect((standing?.height ?? 0) / inch).toBeCloseTo(3.75 * Math.sin(radians(40)), 2)
})

// By hand: sides 4, 3 3/4, 3 1/2 and 3 1/4 in, so sheets of 12, 11 1/4, 10 1/2 and 9 3/4 in.
describe.each([0, 1, 2, 3])('with %d nests', (nests) => {
  const card = cardOf(block(`nests: ${nests}`))
  const { structure } = card
  const proof = foldCard(structure)

  test('each nest is a step smaller than what it stands in', () => {
    const sizes = ['11 1/4 × 11 1/4 in', '10 1/2 × 10 1/2 in', '9 3/4 × 9 3/4 in']
    for (let i = 1; i <= nests; i++) expect(measure(card, `nest ${i}.size`)).toBe(sizes[i - 1])
    expect(structure.pieces.map(({ name }) => name)).toEqual([
      'base',
      ...['nest 1', 'nest 2', 'nest 3'].slice(0, nests),
      'lid',
    ])
  })

  test('they stand centre on centre, each wall half a step inside the next', () => {
    expect(proof.findings).toEqual([])
    const middle = (name: string, side: number) => {
      const at = proof.closed?.pose.get(name)
      if (!at) throw new Error(name)
      return inSpace(at, [1.5 * side * inch, 1.5 * side * inch]).map((x) => x / inch)
    }
    for (let i = 1; i <= nests; i++) {
      const [x = 0, y = 0] = middle(`nest ${i} floor`, 4 - i / 4)
      expect(x).toBeCloseTo(2, 6)
      expect(y).toBeCloseTo(2, 6)
      const [left = 0] = inSpace(proof.closed?.pose.get(`nest ${i} left wall`) ?? ({} as never), [
        (4 - i / 4) * inch,
        1.5 * inch * (4 - i / 4),
      ])
      expect(left / inch).toBeCloseTo(i / 8, 6)
    }
    for (const pose of [proof.closed?.pose, proof.between(0.5), proof.standing?.pose])
      expect(pose && troublesIn(structure, pose, { gap: 1e-5, thickness: 1.5 })).toEqual([])
  })
})

// The lid is 4 1/8 in wide with a rim of 1 in: a sheet of 6 1/8 in, scored at 1 and 5 1/8.
test('the lid is a tray of its own, whose corners close', () => {
  const card = cardOf(block())
  expect(['lid.size', 'lid.uprights', 'lid.levels'].map((name) => measure(card, name))).toEqual([
    '6 1/8 × 6 1/8 in',
    '1 and 5 1/8 in',
    '1 and 5 1/8 in',
  ])
  const lid = { ...card.structure, display: { ...card.structure.display, angles: [], plate: 'lid top' } }
  const { closed, findings, freedom } = foldCard(lid)
  expect([findings, freedom]).toEqual([[], 0])
  for (const side of [closed?.size.width, closed?.size.height]) expect(side?.equals(inches(33, 8))).toBe(true)
})

test('the panels of the catalogue follow the nests', () => {
  expect(Object.keys(explodingBox.panels)).toContain('nest 1 left wall')
  const { findings } = check(block('nests: 0\nlayers: {inlay: {on: nest 1 floor, border: 1/8 in}}'))
  expect(findings.map(({ rule }) => rule)).toEqual(['unknown-name'])
})

test('a box that is not square, or a lid that would not slide, is refused', () => {
  const told = (text: string) =>
    check(text).findings.map(({ rule, message, suggestion }) => [rule, message, suggestion])
  expect(told(block('', '4 x 5 in'))).toEqual([
    ['impossible-size', 'An exploding box is square, and this one is 4 in × 5 in', 'Make it 4 in both ways'],
  ])
  expect(told(block('gap: 1/16 in'))).toEqual([
    [
      'impossible-size',
      'A lid 1/16 in wider than the box does not slide over it',
      'Make the gap at least 1/8 in',
    ],
  ])
  expect(told(block('nests: 3\nstep: 2 in'))).toEqual([
    [
      'impossible-size',
      'With steps of 2 in nothing is left of the last nest',
      'Make the step at most 1 5/16 in',
    ],
  ])
})
