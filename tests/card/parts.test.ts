import { describe, expect, test } from 'vitest'
import { minus, plus } from '../../src/length/length.ts'
import { cardOf, measure } from './block.ts'

const bridge = 'fold: bridge\nclosed: 7 x 5 in\nleg: 3/4 in\n'
const lettered = (more: string) =>
  `${bridge}spans:\n  wall: {height: 1 in}\nlettering:\n  name: {on: wall, letters: HARBOUR, ${more}}`

describe('lettering', () => {
  test('gaps are equal, and what the ruler cannot share widens both margins', () => {
    const card = cardOf(lettered('widths: 5/8 in, margin: 1/4 in'))
    // By hand: (7 - 7 · 5/8 - 2 · 1/4) / 6 = 0.354 in, down to 5/16; 7 - 4 3/8 - 6 · 5/16 = 3/4, so margins of 3/8.
    expect([measure(card, 'name.gap'), measure(card, 'name.marks.1'), measure(card, 'name.marks.7')]).toEqual(
      ['5/16 in', '3/8 in', '6 in'],
    )
  })

  test('letters of different widths', () => {
    const card = cardOf(
      `${bridge}spans:\n  wall: {height: 1 in}\nlettering:\n  n: {on: wall, letters: [M, I, L], widths: [1 in, 1/4 in, 3/4 in], margin: 1 in}`,
    )
    const [n] = card.lettering
    if (!n) throw new Error('no lettering')
    const ends = n.marks.map((mark, i) => plus(mark, n.widths[i] as typeof mark))
    expect(minus(n.marks[1] as (typeof n.marks)[0], ends[0] as (typeof n.marks)[0]).equals(n.gap)).toBe(true)
    expect(minus(n.marks[2] as (typeof n.marks)[0], ends[1] as (typeof n.marks)[0]).equals(n.gap)).toBe(true)
  })

  test('an accent belongs to its letter', () => {
    const card = cardOf(
      `${bridge}spans:\n  wall: {height: 1 in}\nlettering:\n  n: {on: wall, letters: "E\u0301TE\u0301", widths: 1 in}`,
    )
    expect(measure(card, 'n.count')).toBe('3')
  })
})

describe('windows', () => {
  test('sit in the middle and are cut out of the piece', () => {
    const card = cardOf(`fold: side\nclosed: 5 x 7 in\napertures:\n  porthole: {on: front, size: 2 x 3 in}`)
    const base = card.structure.pieces.find((p) => p.name === 'base')
    expect(base?.cuts).toHaveLength(4)
    expect(base?.cuts[0]?.from.x.equals(readMm('1 1/2'))).toBe(true)
    expect(base?.cuts[0]?.from.y.equals(readMm('2'))).toBe(true)
  })
})

describe('layers', () => {
  test('a layer on a layer, in any order', () => {
    const card = cardOf(
      'fold: side\nclosed: 5 x 7 in\nlayers:\n  picture: {on: mat, border: 1/4 in}\n  mat: {on: front, border: 1/8 in}',
    )
    expect(measure(card, 'picture.size')).toBe('4 1/4 × 6 1/4 in')
  })

  test('a layer on the outside lies turned over, its left border where you see the left', () => {
    const card = cardOf(
      'fold: side\nclosed: 5 x 7 in\nlayers:\n  strip: {on: front, border: {left: 1 in, right: 3 in}}',
    )
    const bond = card.structure.bonds.find((b) => b.plate === 'strip')
    expect([bond?.side, bond?.over]).toEqual(['back', true])
    // Seen from outside the left edge of the front is its right one inside, at 5 in.
    expect(bond?.at.x.equals(readMm('4'))).toBe(true)
  })

  test('names may be computed from others', () => {
    const card = cardOf(
      `${bridge}layers:\n  panel: {on: floor, border: {sides: leg / 2, top: closed.height / 5}}`,
    )
    expect(measure(card, 'panel.size')).toBe('4 3/4 × 4 in')
  })
})

describe('a fold of your own', () => {
  test('panels, creases and glue', () => {
    const card = cardOf(
      `fold: free
closed: 40 x 60 mm
panels: {a: 40 mm, b: 20 mm, c: 40 mm, d: 20 mm, tab: 10 mm}
creases: [valley, valley, valley, valley]
glue:
  - {panel: tab, onto: a, edge: left}`,
      { unit: 'mm' },
    )
    expect([measure(card, 'base.size'), measure(card, 'base.scores')]).toEqual([
      '130 × 60 mm',
      '40, 60, 100 and 120 mm',
    ])
    expect(card.structure.bonds[0]?.at.x.valueOf()).toBe(-120)
  })
})

const readMm = (inch: string) => cardOf(`fold: side\nclosed: ${inch} x 1 in`).closed.width
