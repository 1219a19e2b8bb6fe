import { toHtml } from 'hast-util-to-html'
import { describe, expect, test } from 'vitest'
import { cardOf, cardsAt, gate, harbour } from './cards.ts'
import { drawn, figuresOf } from './figures.ts'
import { attribute, elements, text } from './svg.ts'

const everyCard = cardsAt(['8 x 6 in', 'A6 landscape'])

const html = (card: ReturnType<typeof cardOf>) =>
  figuresOf(card).map((f) => toHtml(f.figure.svg, { space: 'svg' }))
const idsOf = (svg: ReturnType<typeof drawn>['svg']) =>
  elements(svg).flatMap((e) => (typeof e.properties.id === 'string' ? [e.properties.id] : []))

describe.each(everyCard)('every figure of $title', (card) => {
  const figures = figuresOf(card)

  test('is an image with a name and words for it', () => {
    for (const { name, figure } of figures) {
      const { svg, alternative } = figure
      expect(svg.properties.role).toBe('img')
      const labels = (svg.properties.ariaLabelledBy as string[]).map((id) => {
        const node = elements(svg).find((e) => e.properties.id === id)
        return node && [node.tagName, text(node)]
      })
      expect([name, labels.map((l) => l?.[0])]).toEqual([name, ['title', 'desc']])
      expect(labels[1]?.[1]).toBe(alternative)
      expect(alternative).toMatch(/\d.*\.$/)
      expect(JSON.stringify(svg)).not.toMatch(/undefined|NaN|null|fig~/)
    }
  })

  test('says its size in print, and nothing of it is cut off', () => {
    for (const { figure } of figures) {
      const [, , width, height] = attribute(figure.svg, 'viewBox').split(' ').map(Number)
      expect(attribute(figure.svg, 'width')).toBe(`${width}mm`)
      expect(attribute(figure.svg, 'height')).toBe(`${height}mm`)
      expect(figure.width).toBeCloseTo(width ?? 0, 2)
      expect(figure.height).toBeCloseTo(height ?? 0, 2)
    }
  })

  test('points only to what it has', () => {
    for (const { figure } of figures) {
      const ids = new Set(idsOf(figure.svg))
      for (const [, id = ''] of JSON.stringify(figure.svg).matchAll(/url\(#([^)]+)\)/g))
        expect(ids).toContain(id)
    }
  })
})

test('figures on one page have no id in common', () => {
  const cards = [cardOf(harbour), cardOf(harbour, 'mm'), cardOf(harbour, 'in', '6 x 6 in'), cardOf(gate)]
  const ids = cards.flatMap((card) => figuresOf(card).flatMap((f) => idsOf(f.figure.svg)))
  expect(ids.length).toBeGreaterThan(60)
  expect(new Set(ids).size).toBe(ids.length)
})

test('the same figure twice on one page has other ids when it is asked for with a key', () => {
  const [a, b] = ['one', 'two'].map((key) => drawn('flat', cardOf(gate), 'base', 'in', { key }))
  const ids = [a, b].flatMap((f) =>
    idsOf(f?.svg ?? { type: 'element', tagName: 'svg', properties: {}, children: [] }),
  )
  expect(new Set(ids).size).toBe(4)
})

test('the same card is drawn the same, to the last byte', () => {
  expect(html(cardOf(harbour))).toEqual(html(cardOf(harbour)))
})

test('numbers are written short', () => {
  // An id is a word, and a colour is one, whatever digits they have.
  for (const svg of html(cardOf(harbour)))
    expect(svg.replace(/(id|labelledby)="[^"]*"|#[0-9a-f]{6}/g, '')).not.toMatch(
      /\d\.\d{5}|\d\.0+[" ]|-0[" ,]|\de[-+]?\d/,
    )
})
