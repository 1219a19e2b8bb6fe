import { describe, expect, test } from 'vitest'
import type { Structure } from '../../src/card/structure.ts'
import { numberIn } from '../../src/length/length.ts'
import { inSpace } from '../fold/checker.ts'
import { measure } from './block.ts'
import { cutsOf, folded, stagger } from './folded.ts'

const inch = 25.4

const bondOf = ({ bonds }: Structure, plate: string) => {
  const bond = bonds.find((b) => b.plate === plate)
  return bond && [bond.side, bond.over, bond.turn, numberIn(bond.at.x, 'in'), numberIn(bond.at.y, 'in')]
}

describe('further sheets', () => {
  test('a step between two pages, square when the pages are', () => {
    const { card, proof, closed } = folded(`fold: free
closed: 4 x 6 in
panels: {left page: 4 in, right page: 4 in}
creases: [valley]
sheets:
  step:
    stock: white card
    height: 2 in
    panels: {left tab: 1/2 in, side: 1 in, face: 2 in, right tab: 1/2 in}
    creases: [valley, mountain, valley]
bonds:
  - {panel: left tab, onto: left page, right: 2 in, bottom: 1 in}
  - {panel: right tab, onto: right page, left: 1 in, bottom: 1 in}
stand: {panel: right page, creases: [{between: [left page, right page], bent: 90}]}`)
    expect([measure(card, 'step.size'), measure(card, 'step.scores'), closed]).toEqual([
      '4 × 2 in',
      '1/2, 1 1/2 and 3 1/2 in',
      '4 × 6 in',
    ])
    // The tab's left edge is 1 1/2 in from the left edge of the page, which is that of the base.
    expect(bondOf(card.structure, 'left tab')).toEqual(['face', false, 0, 1.5, 1])
    // The right tab begins 5 in from the left edge of the base, and 3 1/2 in from that of the step.
    expect(bondOf(card.structure, 'right tab')).toEqual(['face', false, 0, 1.5, 1])
    const [page, face] = [proof.standing?.pose.get('right page'), proof.standing?.pose.get('face')]
    const [gutter, ridge] = [page && inSpace(page, [4 * inch, 0]), face && inSpace(face, [1.5 * inch, 0])]
    const off = ridge?.map((x, i) => (x - (gutter?.[i] ?? 0)) / inch)
    expect(off && [off[0], off[1], off[2]].map((x) => Math.round((x ?? 0) * 1e6) / 1e6)).toEqual([1, 1, 2])
  })

  test('film through a slit floats half way between the two parts', () => {
    const { card, proof } = folded(`${stagger}sheets:
  film:
    stock: clear film
    strips:
      high: {height: 1 in, panels: {left tab: 1/2 in, deck: 2 1/2 in}, creases: [valley]}
      low: {height: 3/4 in, panels: {deck, right tab: 1/2 in}, creases: [mountain]}
bonds:
  - {panel: left tab, onto: upper wall, left: 0, bottom: 0}
  - {panel: right tab, onto: lower wall, side: outside, right: 0, top: 0}
stand: {panel: back}`)
    expect(measure(card, 'film.size')).toBe('3 1/2 × 1 3/4 in')
    expect(proof.freedom).toBe(1)
    const depth = (plate: string) => proof.standing?.pose.get(plate)?.origin[2] ?? Number.NaN
    expect(depth('front') - depth('back')).toBeCloseTo(inch, 6)
    expect((depth('deck') - depth('back')) / inch).toBeCloseTo(0.5, 1)
    expect(cutsOf(card.structure, 'film')?.map(String).sort()).toEqual(
      ['0,0.75,0.5,0.75', '3,0.75,3.5,0.75', '0.5,0,0.5,0.75', '3,0.75,3,1.75'].sort(),
    )
  })

  test.each([
    ['', ['face', false, 0, 5, 0]],
    ['edge: right', ['face', false, 0, 9, 0]],
    ['edge: top', ['face', false, 0, 5, 5]],
    ['right: 1/2 in, top: 1 in', ['face', false, 0, 8.5, 4]],
    ['side: outside, left: 1 in', ['back', false, 0, 6, 0]],
    // Turned over, the tag reaches from -1 to 0 before it is moved.
    ['over: yes, left: 1 in', ['face', true, 0, 7, 0]],
    // Turned by a quarter it is 2 in wide and 1 in high, and reaches from -2 to 0.
    ['turn: 90, left: 1 in, bottom: 1 in', ['face', false, 90, 8, 1]],
    ['turn: -90, left: 1 in, bottom: 1 in', ['face', false, 270, 6, 2]],
    ['turn: 180°, right: 0, top: 0', ['face', false, 180, 10, 7]],
  ])('where a tag of 1 x 2 in is stuck: %s', (words, expected) => {
    const { card } = folded(`fold: free
closed: 5 x 7 in
panels: {front: 5 in, back: 5 in}
creases: [valley]
sheets:
  tag: {width: 1 in, height: 2 in, stock: red paper}
bonds:
  - {panel: tag, onto: back, ${words}}`)
    expect(bondOf(card.structure, 'tag')).toEqual(expected)
  })

  test('a slanting one lies where it is said as far as a thousandth of a millimetre', () => {
    const { card } = folded(`fold: free
closed: 5 x 7 in
panels: {front: 5 in, back: 5 in}
creases: [valley]
sheets: {tag: {width: 1 in, height: 2 in}}
bonds: [{panel: tag, onto: back, turn: 30, left: 1 in, bottom: 1 in, raise: 1 mm}]`)
    const bond = card.structure.bonds[0]
    // Its upper left corner is the one furthest left: 2 in · sin 30° before the lower left one.
    expect(bond && numberIn(bond.at.x, 'mm')).toBeCloseTo((5 + 1 + 1) * inch, 2)
    expect(bond && [numberIn(bond.at.y, 'mm'), numberIn(bond.height, 'mm')]).toEqual([inch, 1])
  })
})
