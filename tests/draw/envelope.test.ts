import { describe, expect, test } from 'vitest'
import { drawFigure } from '../../src/draw/draw.ts'
import { foldedOver } from '../../src/draw/fold-over.ts'
import { locales } from '../../src/wording/locales.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { cardOf } from './cards.ts'
import { collisions } from './collide.ts'
import { drawn, textsOf } from './figures.ts'
import { byClass } from './svg.ts'

type Flat = readonly [number, number]

const cardAt = (make: string | undefined) =>
  cardOf(`fold: side\nclosed: 5 x 7 in${make ? `\nenvelope: {make: ${make}}` : ''}`)

/** How far a point lies outside a convex polygon, counter-clockwise; 0 inside. */
const outside = ([x, y]: Flat, loop: readonly Flat[]): number =>
  Math.max(
    0,
    ...loop.map(([x1, y1], i) => {
      const [x2, y2] = loop[(i + 1) % loop.length] ?? [x1, y1]
      return ((x - x1) * (y2 - y1) - (y - y1) * (x2 - x1)) / Math.hypot(x2 - x1, y2 - y1)
    }),
  )
const area = (loop: readonly Flat[]): number =>
  loop.reduce((sum, [x1, y1], i) => {
    const [x2, y2] = loop[(i + 1) % loop.length] ?? [x1, y1]
    return sum + (x1 * y2 - x2 * y1) / 2
  }, 0)

describe.each(['diagonal', 'side seam'] as const)('a %s envelope', (make) => {
  const card = cardAt(make)
  const envelope = card.card.envelope
  if (!envelope) throw new Error('Expected an envelope')
  const panels = foldedOver(envelope.structure, 'front', envelope.folding)

  test('has all its flaps within the front when it is shut, the same size and turned over', () => {
    const flat = foldedOver(envelope.structure, 'front', [])
    const front = panels.find(({ name }) => name === 'front')?.loop ?? []
    for (const { name, loop, over } of panels) {
      const before = flat.find((panel) => panel.name === name)?.loop ?? []
      expect(area(loop)).toBeCloseTo(over ? -area(before) : area(before), 6)
      for (const corner of loop) expect(outside(corner, front), name).toBeLessThan(1e-6)
    }
    expect(panels.map(({ name }) => name).slice(-4)).toEqual(envelope.folding)
  })

  test('is drawn flat with its measures, and folded in four steps with an arrow for each flap', () => {
    const { svg, alternative } = drawn('envelope', card)
    const steps = textsOf(svg, 'legend').join(' ')
    for (const step of [
      '1 fold in the left flap and the right flap',
      '2 glue them',
      '3 put the card in',
      '4 shut',
    ])
      expect(steps).toContain(step)
    expect(byClass(svg, 'movement')).toHaveLength(4)
    expect(alternative).toContain('Fold in the left flap and the right flap')
    expect(alternative).toMatch(/Inside it measures [\d /]+ × [\d /]+ in\.$/)
  })

  test.each(['in', 'mm'] as const)(
    'in the narrow room of large print, %s, it leaves room on the page for what comes after, and nothing touches',
    (unit) => {
      const narrow = { maxWidth: 75, maxHeight: 76 }
      const { svg, width, height } = drawn('envelope', card, undefined, unit, narrow)
      expect(collisions(svg)).toEqual([])
      expect(width).toBeLessThanOrEqual(narrow.maxWidth + 1)
      // Large print shows it 2.4 times as large, on a page with 269 mm between its margins.
      expect(269 - height * 2.4).toBeGreaterThan(45)
    },
  )
})

/** Rooms on a whole page, on half a page and in large print. */
const rooms = [
  { maxWidth: 168, maxHeight: 62 },
  { maxWidth: 126, maxHeight: 62 },
  { maxWidth: 75, maxHeight: 76 },
]

test.each(locales)('nothing touches in any room, however long the words of a language are: %s', (locale) => {
  for (const room of rooms) {
    const figure = drawFigure('envelope', cardAt('diagonal'), undefined, wordingOf(locale, 'mm'), room)
    if (!('svg' in figure)) throw new Error('Expected a figure')
    expect(collisions(figure.svg), `${room.maxWidth} mm wide`).toEqual([])
    expect(figure.width).toBeLessThanOrEqual(room.maxWidth + 1)
  }
})

test('a card without an envelope has none to draw', () => {
  expect(() => drawn('envelope', cardAt(undefined))).toThrow('This card has no envelope to draw')
})
