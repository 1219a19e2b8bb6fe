import { describe, expect, test } from 'vitest'
import { formatLength } from '../../src/length/format.ts'
import { cardOf, cardsAt, gate, harbour } from './cards.ts'
import { drawn, textsOf } from './figures.ts'
import { attribute, byClass, elements, loopsOf } from './svg.ts'

const everyCard = cardsAt()

const sides = ['left', 'right', 'top', 'bottom'] as const

describe.each(everyCard)('$title', (card) => {
  test.each(card.card.layers)('the borders of $name are its own', (layer) => {
    const { svg, alternative } = drawn('place', card, layer.name)
    const said = sides.map((side) => layer.border[side]).filter((x) => !x.equals(0))
    const texts = said.map((x) => formatLength(x, card.unit))
    expect(textsOf(svg, 'border').sort()).toEqual(texts.sort())
    for (const words of texts) expect(alternative).toContain(words)
  })
})

test('an edge without a border is said to be flush', () => {
  const { svg, alternative } = drawn('place', cardOf(harbour), 'backdrop')
  expect(textsOf(svg, 'flush')).toEqual(['flush'])
  expect(textsOf(svg, 'legend')).toEqual(['1/16 in from each side, flush at top and bottom'])
  expect(alternative).toMatch(/sits on the inside of floor: 1\/16 in from each side, flush at top and bottom/)
})

test('a layer on two panels is drawn on both and measured on one', () => {
  const { svg } = drawn('place', cardOf(gate), 'door panel')
  expect(byClass(svg, 'layer')).toHaveLength(2)
  expect(textsOf(svg, 'border')).toHaveLength(4)
  expect(textsOf(svg, 'legend')).toEqual([
    'seen from the outside of the card',
    '1/8 in from the edge all round',
    'the same on right door',
  ])
})

test('of walls one behind the other the one next to the names is named', () => {
  const box = `fold: exploding box
closed: 4 x 4 in
base: {stock: white card}
layers:
  sea: {on: [left wall, right wall, upper wall, lower wall], border: 1/8 in, stock: wave paper}`
  const { svg } = drawn('place', cardOf(box), 'sea')
  const names = textsOf(svg, 'name').filter((name) => name.endsWith('wall'))
  expect(names.sort()).toEqual(['left wall', 'lower wall', 'right wall'])
})

test('panels of pieces that are not drawn are named', () => {
  const easel = `fold: easel
closed: 5 x 5 in
base: {stock: white card}
layers:
  mat: {on: [floor, front], border: 1/4 in, stock: gold card}`
  const { svg, alternative } = drawn('place', cardOf(easel), 'mat')
  expect(byClass(svg, 'layer')).toHaveLength(1)
  expect(textsOf(svg, 'legend')).toEqual(['1/4 in from the edge all round', 'the same on front'])
  expect(alternative).toContain('sits on the inside of floor and front')
})

test('seen from the outside, left and right change places, and a valley is a mountain', () => {
  const card = cardOf(gate)
  const { svg } = drawn('place', card, 'door panel')
  const x = (words: string) =>
    Number(attribute(byClass(svg, 'name').find((n) => JSON.stringify(n).includes(words)) ?? svg, 'x'))
  expect(x('right door')).toBeLessThan(x('left door'))
  expect(byClass(svg, 'mountain')).toHaveLength(2)
  expect(byClass(svg, 'valley')).toHaveLength(0)
})

test('uneven borders lie on their own sides, to scale', () => {
  const { svg } = drawn('place', cardOf(gate), 'sea mat')
  const ends = (name: string) => {
    const all = byClass(svg, name).flatMap((node) =>
      node.tagName === 'path'
        ? loopsOf(node).flat()
        : ([
            [Number(attribute(node, 'x1')), Number(attribute(node, 'y1'))],
            [Number(attribute(node, 'x2')), Number(attribute(node, 'y2'))],
          ] as const),
    )
    return {
      y: [Math.min(...all.map((p) => p[1])), Math.max(...all.map((p) => p[1]))] as const,
      x: [Math.min(...all.map((p) => p[0])), Math.max(...all.map((p) => p[0]))] as const,
    }
  }
  const [layer, panel] = [ends('layer'), ends('panel')]
  const top = layer.y[0] - panel.y[0]
  const bottom = panel.y[1] - layer.y[1]
  // 1/2 in at the top and 3/8 in at the bottom.
  expect(top / bottom).toBeCloseTo(4 / 3, 2)
})

test('a pattern with a top has its direction marked on it', () => {
  const [with_, without] = ['backdrop', 'side strip'].map((name) => drawn('place', cardOf(harbour), name).svg)
  expect(byClass(with_ ?? never(), 'up')).toHaveLength(1)
  expect(byClass(without ?? never(), 'up')).toHaveLength(0)
})

const never = (): never => {
  throw new Error('There is a figure')
}

test('a span is shown across the standing card, with its height above the lower edge', () => {
  const card = cardOf(harbour)
  const { svg, alternative } = drawn('place', card, 'beam')
  expect(textsOf(svg, 'border')).toEqual(['3 5/8 in'])
  expect(alternative).toBe(
    'Beam, vellum, 8 × 2 3/8 in (width first), reaches across left tab and right tab: 3 5/8 in from the bottom, flush at both sides and the top.',
  )
})

test('what goes on a sheet with a window is shown across it', () => {
  const arch = `fold: side
closed: 5 x 7 in
base: {stock: white card}
layers:
  arch: {on: back, border: 1/8 in, stock: stone paper}
  wall: {on: arch, border: {sides: 0 in, top: 4 in, bottom: 0 in}, stock: wave paper}
apertures:
  gate: {on: arch, size: 3 x 5 in}`
  const { svg } = drawn('place', cardOf(arch), 'wall')
  const [sheet, window] = loopsOf(byClass(svg, 'stock')[0] ?? never()).map((loop) => {
    const [x, y] = [loop.map((p) => p[0]), loop.map((p) => p[1])]
    return [Math.max(...x) - Math.min(...x), Math.max(...y) - Math.min(...y)] as const
  })
  // A window of 3 × 5 in, in a sheet of 4 3/4 × 6 3/4 in.
  expect((window?.[0] ?? 0) / (sheet?.[0] ?? 1)).toBeCloseTo(3 / 4.75, 2)
  expect((window?.[1] ?? 0) / (sheet?.[1] ?? 1)).toBeCloseTo(5 / 6.75, 2)
  // The wall hides the lower edge of the window and a part of both sides.
  expect(byClass(svg, 'slit')).toHaveLength(3)
})

test('foam under a piece is said, in a measure that foam is sold in', () => {
  expect(textsOf(drawn('place', cardOf(harbour), 'sea wall').svg, 'legend')).toContain('on foam 1 mm high')
})

test('without a name the first layer is shown', () => {
  expect(drawn('place', cardOf(harbour)).svg).toEqual(drawn('place', cardOf(harbour), 'backdrop').svg)
  expect(elements(drawn('place', cardOf(harbour)).svg).length).toBeGreaterThan(10)
})
