import { describe, expect, test } from 'vitest'
import { scoresOfPiece } from '../../../src/card/scores.ts'
import type { Segment } from '../../../src/card/structure.ts'
import { foldCard } from '../../../src/fold/prove.ts'
import { formatSize } from '../../../src/length/format.ts'
import { type Length, numberIn, same } from '../../../src/length/length.ts'
import data from '../../data/slit-cards.json' with { type: 'json' }
import { cardOf, check, measure } from '../block.ts'

const inch = (x: Length): number => numberIn(x, 'in')
const once = (all: readonly number[]): number[] => [...new Set(all)].sort((a, b) => a - b)

describe.each(data.cards)('$id, as published', ({ block, sheet, marks_from_far_edge, ...published }) => {
  const { structure, closed } = cardOf(block)
  const base = structure.pieces[0]
  if (!base) throw new Error('no base')
  const scores = scoresOfPiece(structure, 'base')
  const along = scores[0]?.along ?? 'width'
  const [whole, across] = [base.size[along], base.size[along === 'width' ? 'height' : 'width']]
  // Level creases are marked from the lower edge here, from the far one there.
  const fromFarEdge = (x: Length) => (along === 'width' ? inch(x) : inch(whole) - inch(x))

  test('the sheet and its scores', () => {
    expect([inch(base.size.width), inch(base.size.height)]).toEqual(sheet)
    expect(once(scores.map(({ at }) => fromFarEdge(at)))).toEqual(marks_from_far_edge)
    const right = scores.filter((score) => {
      const there = scores.filter((other) => same(other.at, score.at))
      return there.reduce((sum, { from, to }) => sum + inch(to) - inch(from), 0) === inch(across)
    })
    expect(once(right.map(({ at }) => fromFarEdge(at)))).toEqual(published.across_the_whole_sheet)
  })

  test('the slits', () => {
    const slits = base.cuts.map(({ from, to }: Segment) => {
      const ends = along === 'width' ? [from.x, to.x] : [from.y, to.y]
      const [near = 0, far = 0] = once(ends.map(fromFarEdge))
      return { across: inch(along === 'width' ? from.y : from.x), from: near, to: far }
    })
    if ('cuts' in published) expect(slits).toEqual(published.cuts)
    // The source cuts its panel with a die of no size given.
    else expect(published.source).toBe('swing')
  })

  test('it shuts to its size', () => {
    const proof = foldCard(structure)
    expect(proof.findings).toEqual([])
    expect(proof.closed && formatSize(proof.closed.size, 'in')).toBe(formatSize(closed, 'in'))
  })
})

const one = 'fold: box step\nclosed: 5 x 7 in\nheight: 2 in\ndepth: 1 in\nwidth: 3 in\n'
const said = (text: string) =>
  check(text).findings.map(({ place, message, suggestion }) => [place?.line, message, suggestion])

test('a box 2 in high and 1 in deep: wall crease at 5 - 2, edge 1 further, floor crease at 5 + 1', () => {
  const card = cardOf(one)
  expect(measure(card, 'base.valleys')).toBe('3, 5 and 6 in')
  expect(measure(card, 'base.mountains')).toBe('4 in')
  expect([measure(card, 'step top.size'), measure(card, 'step front.size')]).toEqual(['1 × 3 in', '2 × 3 in'])
  // In the middle: 7 less 3, halved.
  expect(measure(card, 'at')).toBe('2 in')
})

test('with the spine at the top the same box is measured upwards, and stands in the middle of the width', () => {
  const card = cardOf(`${one.replace('5 x 7', '7 x 5')}spine: top`)
  // From the lower edge: 5 + 2, 5 and 5 - 1; the edge 1 below the wall crease.
  expect(measure(card, 'base.size')).toBe('7 × 10 in')
  expect(measure(card, 'base.valleys')).toBe('4, 5 and 7 in')
  expect(measure(card, 'base.mountains')).toBe('6 in')
  expect(card.structure.pieces[0]?.cuts.map(({ from }) => inch(from.x))).toEqual([2, 5])
})

test('a box that sticks out of the shut card is told by how much, and what cures it', () => {
  expect(said(one.replace('height: 2 in', 'height: 4 1/2 in'))).toEqual([
    [
      3,
      '`step` sticks out of the shut card by 1/2 in',
      'Make the height at most 4 in, or the depth at most 1/2 in',
    ],
  ])
  for (const cure of [
    one.replace('height: 2', 'height: 4'),
    one.replace('height: 2', 'height: 4 1/2').replace('depth: 1', 'depth: 1/2'),
  ])
    expect(said(cure)).toEqual([])
})

describe('several boxes', () => {
  const town = (boxes: string, size = '5 x 7 in') => `fold: box step\nclosed: ${size}\nboxes:\n${boxes}`
  const tower = '  tower: {height: 2 in, depth: 1 in, width: 2 in, at: 1 in}\n'

  test('each length has a name, and may be worked out from another', () => {
    const card = cardOf(
      town(`${tower}  shop: {height: tower.height / 2, depth: 2 in, width: tower.width - 1/2 in, at: 4 in}`),
    )
    expect(measure(card, 'shop.height')).toBe('1 in')
    expect(measure(card, 'shop front.size')).toBe('1 × 1 1/2 in')
  })

  test('boxes that touch share a slit, and each keeps its own creases', () => {
    const card = cardOf(town(`${tower}  shop: {height: 1 in, depth: 2 in, width: 2 in, at: 3 in}`))
    const cuts = card.structure.pieces[0]?.cuts.map(({ from, to }) => [from.y, from.x, to.x].map(inch))
    expect(cuts).toEqual([
      [1, 3, 6],
      [3, 3, 7],
      [5, 4, 7],
    ])
    expect(measure(card, 'base.valleys')).toBe('3, 4, 5, 6 and 7 in')
    expect(foldCard(card.structure).findings).toEqual([])
  })

  test('a box that stands on another has its wall crease for its spine', () => {
    const card = cardOf(town(`${tower}  chimney: {on: tower, height: 1 in, depth: 1/2 in, width: 1 in}`))
    // The tower's wall crease is at 5 - 2 = 3: the chimney's is at 3 - 1, its edge 1/2 further, its floor crease at 3 + 1/2.
    expect(measure(card, 'base.valleys')).toBe('2, 3, 3 1/2, 5 and 6 in')
    expect(measure(card, 'base.mountains')).toBe('2 1/2 and 4 in')
    // In the middle of the tower: from 1 + 1/2 to 1 + 1 1/2.
    const cuts = card.structure.pieces[0]?.cuts.map(({ from, to }) => [from.y, from.x, to.x].map(inch))
    expect(cuts).toEqual([
      [1, 3, 6],
      [1.5, 2, 3.5],
      [2.5, 2, 3.5],
      [3, 3, 6],
    ])
    const { closed, freedom, findings } = foldCard(card.structure)
    expect([findings, freedom, closed && formatSize(closed.size, 'in')]).toEqual([[], 1, '5 × 7 in'])
  })

  test('a name may have spaces', () => {
    const card = cardOf(town('  tea room: {width: 3 in}\n  roof light: {on: tea room}'))
    // Half as high as what it stands on, a third as wide, and in its middle: 2 + (3 - 1) / 2.
    expect(['height', 'width', 'at'].map((part) => measure(card, `roof light.${part}`))).toEqual([
      '13/16 in',
      '1 in',
      '3 in',
    ])
  })

  test('boxes without a place are spread evenly', () => {
    const card = cardOf(town('  a: {width: 1 in}\n  b: {width: 2 in}'))
    // 7 less 3 leaves 4, in three gaps of 1 1/3, which go down on the ruler.
    expect([measure(card, 'a.at'), measure(card, 'b.at')]).toEqual(['1 5/16 in', '3 5/8 in'])
  })

  test.each([
    [
      'overlap',
      `${tower}  shop: {height: 1 in, depth: 1 in, width: 2 in, at: 2 1/2 in}`,
      [
        5,
        '`shop` and `tower` overlap along the spine by 1/2 in',
        'Begin `shop` at 3 in, where `tower` ends, or make one of them narrower',
      ],
    ],
    [
      'too wide for what it stands on',
      `${tower}  hat: {on: tower, height: 1 in, depth: 1/2 in, width: 2 in}`,
      [
        5,
        '`hat` is 2 in wide, so nothing is left of the crease that it stands in: `tower` is 2 in',
        'Make the width at most 1 15/16 in',
      ],
    ],
    [
      'too deep for what it stands on',
      `${tower}  hat: {on: tower, height: 1 in, depth: 1 in, width: 1 in}`,
      [5, '`hat` is 1 in deep, and `tower`, which it stands on, is 1 in', 'Make the depth at most 15/16 in'],
    ],
    [
      'beside what it stands on',
      `${tower}  hat: {on: tower, height: 1 in, depth: 1/2 in, width: 1 in, at: 1/2 in}`,
      [
        5,
        '`hat` begins at 1/2 in and is 1 in wide, so it sticks out beyond `tower`',
        'Begin it between 1 in and 2 in',
      ],
    ],
    [
      'too high together',
      `${tower}  mast: {on: tower, height: 3 in, depth: 1/2 in, width: 1 in}`,
      [5, '`mast` sticks out of the shut card by 1/2 in', 'Make the height at most 2 1/2 in'],
    ],
    [
      'nothing left of the spine',
      '  a: {width: 3 in, at: 0 in}\n  b: {width: 4 in, at: 3 in}',
      [5, '`a` and `b` leave nothing of the crease that they stand in', 'Make `b` at most 3 15/16 in wide'],
    ],
    [
      'on a box that is not there',
      `${tower}  hat: {on: towr, height: 1 in}`,
      [5, '`on` wants the name of a box that is listed before this one', 'Write `tower`'],
    ],
    [
      'a key that no box has',
      '  a: {heigth: 1 in}',
      [4, 'Unexpected key `heigth` in the box `a`', 'Write `height`'],
    ],
    [
      'a name that the card has already',
      '  back: {height: 1 in}',
      [4, '`back` is the name of another part of this card', 'Give the box a name of its own'],
    ],
    [
      'a layer with the name of a box',
      `${tower}layers:\n  tower: {on: back, border: {left: 3 in}, stock: paper}`,
      [6, '`tower` is the name of another part of this card', 'Give it a name of its own'],
    ],
    [
      'no box at all',
      '  {}',
      [4, '`boxes` lists no box', 'List one, or leave `boxes` out for a single one in the middle'],
    ],
    [
      'a length that no box has',
      `${tower}height: 1 in`,
      [
        5,
        'Unexpected key `height` in a `box step` card',
        'Choose one of `fold`, `closed`, `base`, `layers`, `spans`, `lettering`, `apertures`, `pieces`, `envelope`, `spine` or `boxes`',
      ],
    ],
  ])('%s', (_, boxes, finding) => {
    expect(said(town(boxes))[0]).toEqual(finding)
  })
})

test('stairs that stick out of the shut card are told by how much', () => {
  const stairs = 'fold: centre step\nclosed: 4 x 6 in\nsteps: 2\nstep: 1 in\nheight: 3 in\ndepth: 3 in'
  // Shut, every edge lies at 3 + (3 - 1) from the spine.
  expect(said(stairs)).toEqual([
    [
      5,
      'The stairs stick out of the shut card by 1 in',
      'Make the height at most 2 in, or the depth at most 2 in',
    ],
  ])
  expect(said(stairs.replace('depth: 3', 'depth: 2'))).toEqual([])
})

test('what is not halved by the plain bands goes to the upper one', () => {
  const { structure } = cardOf('fold: centre step\nclosed: 105 x 148 mm\nband: 75 mm', { unit: 'mm' })
  // 148 less 75 leaves 73: 36 below and 37 above.
  expect(structure.pieces[0]?.cuts.map(({ from }) => numberIn(from.y, 'mm'))).toEqual([36, 111])
})
