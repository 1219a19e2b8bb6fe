import { describe, expect, test } from 'vitest'
import { free } from '../../src/card/folds/free.ts'
import { proveCard } from '../../src/fold/prove-card.ts'
import { formatSize } from '../../src/length/format.ts'
import { usualGrid } from '../../src/length/grid.ts'
import { check, measure } from './block.ts'
import { cutsOf, folded, stagger } from './folded.ts'

describe('one sheet', () => {
  test.each(['width', 'height'])('a hem that is folded over along the %s', (along) => {
    const size = along === 'width' ? '60 x 100 mm' : '100 x 60 mm'
    const { closed } = folded(
      `fold: free
closed: ${size}
along: ${along}
panels: {hem: 20 mm, body: 60 mm}
creases: [valley]
bonds: [{panel: hem, onto: body, over: yes}]`,
      { unit: 'mm' },
    )
    expect(closed).toBe(size.replace('x', '×'))
  })

  test('a crease may stay flat when the card is shut', () => {
    const flap =
      'fold: free\nclosed: 6 x 7 in\npanels: {flap: 1 in, front: 5 in, back: 5 in}\ncreases: [valley, valley]\n'
    expect(folded(`${flap}shut: [{between: [flap, front], bent: flat}]`).closed).toBe('6 × 7 in')
    expect(folded(`${flap}shut: [{between: [flap, front], bent: folded}]`).closed).toBe('5 × 7 in')
    expect(folded(flap).closed).toBe('5 × 7 in')
  })

  test('a slit in a panel is cut, in the middle unless it says where', () => {
    const slot = (words: string) =>
      cutsOf(
        folded(
          `fold: free\nclosed: 6 x 4 in\npanels: {front: 6 in, back: 6 in}\ncreases: [valley]\nslits: {slot: {on: back, length: 2 in${words}}}`,
        ).card.structure,
      )
    expect(slot('')).toEqual([[8, 2, 10, 2]])
    expect(slot(', left: 1 in, bottom: 1/2 in')).toEqual([[7, 0.5, 9, 0.5]])
    expect(slot(', along: height')).toEqual([[9, 1, 9, 3]])
  })

  test('a slit does not run out of a panel that is cut out', () => {
    const slit = (left: string) =>
      check(`${stagger}slits: {slot: {on: front, length: 1 in, bottom: 3 in, left: ${left}}}`)
    expect(slit('1 in').findings).toEqual([])
    expect(slit('2 in').findings.map(({ rule }) => rule)).toEqual(['sticks-out'])
    expect(slit('3 in').findings.map(({ rule }) => rule)).toEqual(['sticks-out'])
  })

  test('layers, windows, letters and spans work on its panels', () => {
    const { card } = folded(`fold: free
closed: 6 x 4 in
panels: {left: 1 in, wall: 1 in, floor: 4 in, other wall: wall.width, right: left.width}
creases: [mountain, valley, valley, mountain]
layers: {mat: {on: floor, border: 1/8 in}}
apertures: {porthole: {on: wall, size: 1/2 x 1/2 in}}
spans: {sea: {height: 1 in, from: left, to: right, width: floor.width + left.width * 2}}
lettering: {name: {on: sea, letters: SEA, widths: 1 in}}
envelope: {make: diagonal}`)
    expect([measure(card, 'mat.size'), measure(card, 'sea.width'), measure(card, 'name.gap')]).toEqual([
      '3 3/4 × 3 3/4 in',
      '6 in',
      '1 1/4 in',
    ])
    expect(card.structure.plates.find(({ name }) => name === 'wall')?.holes).toHaveLength(1)
  })
})

test.each(['A6', 'A7 landscape', '7 x 5 in', '5 x 5 in', '4 1/4 x 5 1/2 in', '120 x 170 mm'])(
  'the starter is a whole card at %s',
  (closed) => {
    for (const unit of ['in', 'mm'] as const) {
      const { card, closed: shut } = folded(free.starter, { unit, closed })
      expect(shut).toBe(formatSize(card.closed, unit))
      expect(check(free.starter, { unit, closed }).findings).toEqual([])
    }
  },
)

test('what folding finds stands where the panel is listed', () => {
  const text = `fold: free
closed: 5 x 6 in
strips:
  upper: {panels: {front: 5 in, back: 5 in}, creases: [valley]}
  lower:
    height: 2 in
    panels: {front: 4 in, side: 1/2 in, face: 2 in, back}
    creases: [valley, mountain, valley]`
  const place = { line: 1, column: 1, offset: 0 }
  const { findings } = proveCard({ name: 'card', text, place }, { unit: 'in', grid: usualGrid.in })
  // The front is cut back by 1 in, the back by 1 1/2 in: from there 1/2 in and 2 in do not meet.
  expect(findings.map(({ rule, place: at }) => [rule, at?.line, at?.column])).toEqual([['folds-flat', 4, 20]])
})
