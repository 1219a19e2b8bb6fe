import { toHtml } from 'hast-util-to-html'
import { expect, test } from 'vitest'
import type { Piece } from '../../src/card/structure.ts'
import { outlineScale, outlineSvg } from '../../src/draw/outline.ts'
import { pier } from '../publish/lesson.ts'

const { pieces, ...structure } = pier().cards[0]?.card.structure ?? { pieces: [], plates: [], hinges: [] }
const named = (name: string) => pieces.find((piece) => piece.name === name) as Piece
const svg = (name: string) =>
  toHtml(outlineSvg(named(name), structure, outlineScale(pieces), '#ffffff'), { space: 'svg' })
const sizeOf = (text: string) =>
  ['width', 'height'].map((side) => Number(new RegExp(`${side}="([\\d.]+)mm"`).exec(text)?.[1]))

test('all pieces of a card are drawn to one scale', () => {
  const rim = 0.5
  const [[w = 0, h = 0], [w2 = 0, h2 = 0]] = [sizeOf(svg('base')), sizeOf(svg('sky'))]
  // 10 × 6 in and 5 7/8 × 6 in.
  expect((w2 - rim) / (w - rim)).toBeCloseTo(5.875 / 10, 3)
  expect(h2).toBeCloseTo(h, 3)
  expect(w).toBeLessThanOrEqual(26.5)
})

test('scores are dashed, valley and mountain unlike', () => {
  const dashes = [...svg('base').matchAll(/d="([^"]*)"[^>]*stroke-dasharray="([^"]*)"/g)]
  expect(dashes.map(([, d]) => d?.match(/M/g)?.length)).toEqual([2, 2])
  expect(dashes[0]?.[2]).not.toBe(dashes[1]?.[2])
  expect(svg('sky')).not.toContain('stroke-dasharray')
})

test('a loose piece has an outline too', () => {
  const loose: Piece = { ...named('sky'), name: 'tag', kind: 'loose' }
  expect(toHtml(outlineSvg(loose, structure, 0.1, '#ffffff'), { space: 'svg' })).toMatch(/<path d="M[^"]+Z"/)
})

test('it is not read out: its row says all that it shows', () => {
  expect(svg('base')).toContain('aria-hidden="true"')
})
