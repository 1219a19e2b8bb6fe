import { describe, expect, test } from 'vitest'
import { toMm } from '../../src/length/length.ts'
import { cardOf, check, measure } from './block.ts'

/** What a border comes to, on a side fold unless `top` says otherwise. */
const border = (layers: string, edge: string, options: Parameters<typeof check>[1] = {}, top = side) =>
  measure(cardOf(`${top}layers:\n${layers}`, options), edge)

const side = 'fold: side\nclosed: 5 x 7 in\nbase: {stock: white card, caliper: 0.4 mm}\n'

describe('a border that follows from the thickness', () => {
  test('along a crease that closes over the layer it is the least a hand keeps, elsewhere a mat’s', () => {
    const edges = ['left', 'right', 'top', 'bottom']
    // The back's face is inside; its left edge is the valley.
    const of = (unit: 'in' | 'mm') =>
      edges.map((e) => border('  mat: {on: back, border: auto}', `mat.border.${e}`, { unit }))
    expect(of('in')).toEqual(['1/16 in', '1/8 in', '1/8 in', '1/8 in'])
    // 1/16 in are 1.5875 mm, 1/8 in are 3.175 mm.
    expect(of('mm')).toEqual(['2 mm', '4 mm', '4 mm', '4 mm'])
  })

  test('nothing closes over the outside of a valley', () => {
    expect(border('  mat: {on: front, border: auto}', 'mat.border.left')).toBe('1/8 in')
    expect(border('  mat: {on: front, border: auto}', 'mat.border.right')).toBe('1/8 in')
    // Inside, the front's right edge is the valley.
    expect(border('  mat: {on: front, side: inside, border: auto}', 'mat.border.right')).toBe('1/16 in')
  })

  test('thicker stock wants more, on either side of the crease, and so does foam', () => {
    const layers = (more: string) =>
      `  mat: {on: back, border: auto, caliper: 1 mm${more}}\n  lining: {on: front, side: inside, border: 1 in, caliper: 0.5 mm}`
    // 1 + 0.5 mm are less than 1/16 in = 1.5875 mm; with 1 mm of foam 2.5 mm, between 1/16 in and 1/8 in = 3.175 mm.
    expect(border(layers(''), 'mat.border.left')).toBe('1/16 in')
    expect(border(layers(', raise: 1 mm'), 'mat.border.left')).toBe('1/8 in')
    expect(border(layers(', raise: 1 mm'), 'mat.border.left', { unit: 'mm' })).toBe('3 mm')
    // With 2 mm of foam 3.5 mm.
    expect(border(layers(', raise: 2 mm'), 'mat.border.left')).toBe('3/16 in')
    // What is on the outside does not fold around this crease.
    const outside =
      '  mat: {on: back, border: auto, caliper: 1 mm}\n  lining: {on: front, border: 1 in, caliper: 5 mm}'
    expect(border(outside, 'mat.border.left')).toBe('1/16 in')
  })

  test('letters count, and what is stuck on the layer', () => {
    const mat = '  mat: {on: back, border: auto, caliper: 1 mm}\n'
    const picture = '  picture: {on: mat, border: 1 in, caliper: 1 mm}\n'
    const name =
      'lettering:\n  name: {on: picture, letters: AHOY, widths: 1/4 in, caliper: 1 mm, raise: 1 mm}'
    expect(border(mat, 'mat.border.left')).toBe('1/16 in')
    expect(border(mat + picture, 'mat.border.left')).toBe('1/8 in')
    // 1 + 1 + 2 mm.
    expect(border(mat + picture + name, 'mat.border.left')).toBe('3/16 in')
  })

  test('a layer on a layer needs no more than a mat’s border where the one below keeps off the crease', () => {
    const on = (below: string, raise: string) =>
      `  mat: {on: back, border: ${below}, caliper: 0.5 mm}\n  picture: {on: mat, border: auto, caliper: 0.5 mm, raise: ${raise}}`
    expect(border(on('auto', '6 mm'), 'picture.border.left')).toBe('1/8 in')
    // Flush below: 0.5 + 0.5 + 6 mm = 7 mm, on the ruler 5/16 in; a mat of 1/8 in takes 1/8 in of it.
    expect(border(on('0 in', '6 mm'), 'picture.border.left')).toBe('5/16 in')
    expect(border(on('1/8 in', '6 mm'), 'picture.border.left')).toBe('3/16 in')
  })

  test('one edge or a group of them, in a list too', () => {
    const sides = cardOf(`${side}layers:\n  mat: {on: back, border: {sides: auto, ends: 0 in}}`)
    expect(measure(sides, 'mat.size')).toBe('4 13/16 × 7 in')
    const list = cardOf(`${side}layers:\n  mat: {on: back, border: [auto, 1 in, auto, 0 in]}`)
    expect(['left', 'right', 'top', 'bottom'].map((e) => measure(list, `mat.border.${e}`))).toEqual([
      '1/16 in',
      '1 in',
      '1/8 in',
      '0 in',
    ])
  })

  test('several panels take the widest that one of them needs', () => {
    const bridge = 'fold: bridge\nclosed: 7 x 5 in\nleg: 3/4 in\n'
    const both = border('  strip: {on: [left leg, right leg], border: auto}', 'strip.border.left', {}, bridge)
    // The left leg's left edge is a mountain, the right leg's a valley, which closes over it.
    expect(both).toBe('1/8 in')
  })

  test('layers that face each other do not go round in a circle, and other names may be computed from them', () => {
    const { card, findings } = check(
      `${side}layers:
  a: {on: back, border: auto, caliper: 1 mm}
  b: {on: front, side: inside, border: auto, caliper: 1 mm}
  c: {on: a, border: {left: a.border.left + b.border.right}}`,
    )
    expect(findings).toEqual([])
    // 2 mm are over 1/16 in, so both keep 1/8 in.
    expect(card && [measure(card, 'c.border.left'), measure(card, 'b.border.right')]).toEqual([
      '1/4 in',
      '1/8 in',
    ])
  })

  test('a border that needs itself is told', () => {
    const twisted = check(`${side}layers:\n  a: {on: b, border: auto}\n  b: {on: a, border: auto}`)
    expect(twisted.card).toBeUndefined()
    expect(twisted.findings.map((f) => f.rule)).toContain('name-circle')
  })
})

describe('lettering in the structure', () => {
  const letters = (on: string, more = '') =>
    `lettering:\n  name: {on: ${on}, letters: IO, widths: [1/2 in, 1 in], margin: 1/4 in${more}}`

  test('each letter is a pad on its strip, as high as the strip, where its mark is', () => {
    const { structure, lettering } = cardOf(
      `${side}layers:\n  strip: {on: back, border: 1 in}\n${letters('strip', ', caliper: 1 mm, raise: 2 mm')}`,
    )
    expect(structure.pads?.map((pad) => [pad.onto, pad.side, toMm(pad.height)])).toEqual([
      ['strip', 'face', 3],
      ['strip', 'face', 3],
    ])
    expect(structure.pads).toEqual(lettering[0]?.pads)
    // The strip is 3 × 5 in; the letters lie at its margins: 1/4 to 3/4 and 1 3/4 to 2 3/4 in.
    expect(
      structure.pads?.map(({ outline }) =>
        outline.map(({ x, y }) => [x.div(25.4).valueOf(), y.div(25.4).valueOf()]),
      ),
    ).toEqual([
      [
        [0.25, 0],
        [0.75, 0],
        [0.75, 5],
        [0.25, 5],
      ],
      [
        [1.75, 0],
        [2.75, 0],
        [2.75, 5],
        [1.75, 5],
      ],
    ])
  })

  test('on the outside of a panel they run the other way', () => {
    const { structure } = cardOf(side + letters('front'))
    const [first] = structure.pads ?? []
    // Seen from outside the left edge of the 5 in wide front is its right one inside.
    expect([first?.side, first?.outline[1]?.x.div(25.4).valueOf()]).toEqual(['back', 4.75])
  })

  test('on the front of a card that hangs from its upper edge they run from its left', () => {
    const { structure } = cardOf(`${side}spine: top\n${letters('front')}`)
    const [first] = structure.pads ?? []
    expect([first?.side, first?.outline[0]?.x.div(25.4).valueOf()]).toEqual(['back', 0.25])
  })

  test('a strip on two panels has its letters twice, and a loose piece has them nowhere', () => {
    const bridge = 'fold: bridge\nclosed: 7 x 5 in\nleg: 2 in\n'
    const tabs = cardOf(`${bridge}layers:\n  strip: {on: [left tab, right tab]}\n${letters('strip')}`)
    expect(tabs.structure.pads?.map((pad) => pad.onto)).toEqual([
      'strip on left tab',
      'strip on left tab',
      'strip on right tab',
      'strip on right tab',
    ])
    expect(cardOf(`${side}pieces:\n  sign: {size: 4 x 1 in}\n${letters('sign')}`).structure.pads).toEqual([])
  })
})
