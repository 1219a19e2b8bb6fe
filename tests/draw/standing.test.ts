import { expect, test } from 'vitest'
import { frontLeft } from '../../src/draw/camera.ts'
import type { Vector } from '../../src/fold/pose.ts'
import { cardOf, gate, harbour } from './cards.ts'
import { luminance } from './contrast.ts'
import { drawn, textsOf } from './figures.ts'
import { attribute, byClass, loopsOf, number } from './svg.ts'

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

test('equal lengths look equal wherever they are: the view has no vanishing point', () => {
  const { right, up, eye } = frontLeft
  for (const [a, b] of [
    [right, up],
    [up, eye],
    [right, eye],
  ] as const)
    expect(dot(a, b)).toBeCloseTo(0, 12)
  for (const a of [right, up, eye]) expect(dot(a, a)).toBeCloseTo(1, 12)
})

test('the eye is to the left of the front and above it', () => {
  expect(frontLeft.eye[0]).toBeLessThan(0)
  expect(frontLeft.eye[1]).toBeGreaterThan(0)
  expect(frontLeft.eye[2]).toBeGreaterThan(frontLeft.eye[1])
  expect(frontLeft.up[1]).toBeGreaterThan(0.8)
})

test('every plate is painted once, windows left open', () => {
  const card = cardOf(harbour)
  const { svg } = drawn('standing', card)
  const faces = byClass(svg, 'face')
  expect(faces).toHaveLength(card.card.structure.plates.length)
  const withWindow = faces.filter((face) => loopsOf(face).length === 2)
  expect(withWindow.map((face) => attribute(face, 'fillRule'))).toEqual(['evenodd'])
})

test('cut edges are heavier than creases, and layers lighter than the base', () => {
  const { svg } = drawn('standing', cardOf(gate))
  const widths = (name: string) =>
    [...new Set(byClass(svg, name).map((l) => number(l, 'strokeWidth')))].sort()
  expect(widths('edge')).toEqual([0.35, 0.5])
  expect(widths('fold')).toEqual([0.35])
})

test('letters stand on their strip, slanted with it', () => {
  const { svg, alternative } = drawn('standing', cardOf(harbour))
  expect(textsOf(svg, 'letter')).toEqual([...'HARBOUR'])
  const places = byClass(svg, 'letter').map((l) =>
    (attribute(l, 'transform').match(/-?[\d.]+/g) ?? []).map(Number),
  )
  const [a = 0, b = 0, c = 0, d = 0] = places[0] ?? []
  // The strip faces the front: its width runs to the right and a little up the paper, its height straight up.
  expect(b / a).toBeCloseTo(-frontLeft.up[0] / frontLeft.right[0], 3)
  expect(c).toBeCloseTo(0, 6)
  expect(d / a).toBeCloseTo(frontLeft.up[1] / frontLeft.right[0], 3)
  const steps = places.slice(1).map((p, i) => (p[4] ?? 0) - (places[i]?.[4] ?? 0))
  for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 2)
  expect(alternative).toContain('The letters HARBOUR are on sea wall.')
})

test('its size is written below it when it is asked for', () => {
  const card = cardOf(harbour)
  expect(textsOf(drawn('standing', card).svg, 'legend')).toEqual([])
  const { svg, alternative } = drawn('standing', card, undefined, 'in', { dimensions: true })
  expect(textsOf(svg, 'legend')).toEqual(['stands 8 in wide, 6 in high, 1 in deep'])
  expect(alternative).toContain('it stands 8 in wide, 6 in high, 1 in deep')
})

test('faces that look away are a step darker', () => {
  const { svg } = drawn('standing', cardOf(harbour))
  const fills = byClass(svg, 'face').map((face) => attribute(face, 'fill'))
  // The base is warm, and nothing else of this card is. Its tabs show their faces, its left leg shows its back.
  const part = (fill: string, at: number) => Number.parseInt(fill.slice(at, at + 2), 16)
  const sand = fills.filter((fill) => part(fill, 1) - part(fill, 5) > 16)
  const lightest = Math.max(...sand.map(luminance))
  expect(lightest).toBeCloseTo(luminance('#f4ecdd'), 6)
  expect(Math.min(...sand.map(luminance))).toBeLessThan(luminance('#ebe1cc') + 1e-6)
})

test('shut, the card shows its size and its thickness', () => {
  const { svg, alternative } = drawn('closed', cardOf(harbour))
  expect(textsOf(svg, 'measure')).toEqual(['8 in', '6 in'])
  expect(textsOf(svg, 'legend').join(' ')).toMatch(
    /^about \d+\/\d+ in thick; layers drawn \d+ times as thick as they are$/,
  )
  expect(alternative).toMatch(/^The bridge card shut, seen from its front: 8 × 6 in, width first, about/)
})
