import { expect, test } from 'vitest'
import { pieceOutline } from '../../src/draw/outline.ts'
import { cardOf, gate, harbour } from './cards.ts'
import { attribute, byClass, elements } from './svg.ts'

const { card } = cardOf(harbour)
const sizeOf = (name: string) => {
  const svg = pieceOutline(card, name, 14)
  return svg && ['width', 'height'].map((side) => Number.parseFloat(attribute(svg, side)))
}

test('the largest piece is as long as asked, the others to the same scale', () => {
  const [base, wall] = [sizeOf('base'), sizeOf('sea wall')]
  expect(Math.max(...(base ?? []))).toBeCloseTo(14, 0)
  // 10 in and 8 in wide.
  expect(((wall?.[0] ?? 0) - 0.35) / ((base?.[0] ?? 0) - 0.35)).toBeCloseTo(0.8, 1)
})

test('a tiny piece can still be seen', () => {
  const svg = pieceOutline(cardOf(gate).card, 'door sign', 14)
  expect(Number.parseFloat(attribute(svg ?? never(), 'width'))).toBeGreaterThan(3.9)
})

test('has creases and windows but no text, and is hidden from screen readers', () => {
  const svg = pieceOutline(card, 'base', 14) ?? never()
  expect(byClass(svg, 'crease')).toHaveLength(4)
  expect(elements(svg).filter((e) => ['text', 'title', 'desc'].includes(e.tagName))).toEqual([])
  expect(attribute(svg, 'ariaHidden')).toBe('true')
  expect(attribute(byClass(svg, 'outline')[0] ?? never(), 'd').match(/M/g)).toHaveLength(2)
})

test('an unknown piece has none', () => {
  expect(pieceOutline(card, 'bakdrop', 14)).toBeUndefined()
})

const never = (): never => {
  throw new Error('There is an outline')
}
