import fc from 'fast-check'
import { s } from 'hastscript'
import { describe, expect, test } from 'vitest'
import { inches, mm } from '../../src/length/length.ts'
import { cardsAt, pleated } from './cards.ts'
import { collisions } from './collide.ts'
import { drawn, figuresOf } from './figures.ts'

const everyCard = cardsAt()

const labelled = (x: number) => s('text', { x, y: 5, 'font-size': 3 }, '5 in')

describe('the test itself sees', () => {
  const svg = (...children: Parameters<typeof s>[2][]) => s('svg', { viewBox: '0 0 40 10' }, ...children)
  test('two texts that touch', () => {
    expect(collisions(svg(labelled(2), labelled(6)))).toEqual(['"5 in" touches "5 in"'])
  })
  test('a line through a text', () => {
    const line = s('line', { x1: 3, y1: 0, x2: 3, y2: 9, 'stroke-width': 0.2, stroke: 'black' })
    expect(collisions(svg(labelled(2), line))).toEqual(['"5 in" touches the line from 3,0 to 3,9'])
  })
  test('a text that is cut off', () => {
    expect(collisions(svg(labelled(38)))).toEqual(['"5 in" runs out of the figure'])
  })
})

const rooms = [
  {},
  { maxWidth: 60, maxHeight: 60 },
  { text: 12, maxWidth: 110 },
  { text: 18, maxWidth: 168, maxHeight: 120 },
]

test.each(everyCard)('no label touches another or a line: $title', (card) => {
  const tried = /^(harbour|gate|easel)/.test(card.title) ? rooms : rooms.slice(0, 1)
  const found = tried.flatMap((options) =>
    figuresOf(card, { dimensions: true, ...options }).flatMap(({ name, figure }) =>
      collisions(figure.svg).map((words) => `${name} ${JSON.stringify(options)}: ${words}`),
    ),
  )
  expect(found).toEqual([])
})

test('nothing touches however the creases lie', () => {
  const panels = fc.array(fc.integer({ min: 1, max: 64 }), { minLength: 2, maxLength: 14 })
  fc.assert(
    fc.property(panels, fc.boolean(), fc.boolean(), (sixteenths, level, metric) => {
      const widths = sixteenths.map((n) => (metric ? mm(n * 2) : inches(n, 16)))
      const card = pleated(widths, level ? 'height' : 'width', inches(4))
      const figure = drawn('flat', card, 'base', metric ? 'mm' : 'in')
      expect(collisions(figure.svg)).toEqual([])
    }),
    { numRuns: 150 },
  )
})
