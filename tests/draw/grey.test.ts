import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import type { Piece, Stock } from '../../src/card/structure.ts'
import type { Hatch } from '../../src/draw/hatch.ts'
import { colours } from '../../src/draw/ink.ts'
import { makePalette, type Paint, tints } from '../../src/draw/stock.ts'
import { mm } from '../../src/length/length.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { cardOf } from './cards.ts'
import { contrast } from './contrast.ts'
import { drawn } from './figures.ts'
import { justNoticeable, lightness, sights } from './sight.ts'
import { byClass } from './svg.ts'
import { likeness } from './swatch.ts'

const stockNamed = (name: string): Stock => ({ name, caliper: mm(0.2) })
const pieceOf = (name: string, kind: Piece['kind']): Piece => ({
  name,
  kind,
  stock: stockNamed(name),
  count: 1,
  size: { width: mm(100), height: mm(100) },
  cuts: [],
})
/** A card of more stocks than any lesson has: a base, two whites, two films and twelve papers. */
const names = [
  'card',
  'white card',
  'writing paper',
  'vellum',
  'acetate',
  ...Array.from({ length: 12 }, (_, i) => `paper ${i + 1}`),
]
const palette = makePalette({ pieces: names.map((name, i) => pieceOf(name, i === 0 ? 'base' : 'layer')) })
const paints = names.map((name) => ({
  name,
  paint: palette(stockNamed(name)),
  away: palette(stockNamed(name), true),
}))

describe.each(sights)('to %s', (_, look) => {
  const under = [
    ...paints.flatMap(({ paint, away }) => [paint.tint, away.tint]),
    ...Object.values(tints).flatMap(({ tint, away }) => [tint, away]),
    colours.paper,
    '#ffffff',
  ]
  test.each(['ink', 'slate', 'rust'] as const)('text in %s has 4.5:1 on every tint', (name) => {
    for (const ground of under)
      expect([ground, contrast(look(colours[name]), look(ground)) >= 4.5]).toEqual([ground, true])
  })

  test.each(['ink', 'slate', 'rust'] as const)('%s lines have 3:1 on the marks of every hatch', (name) => {
    const marks = paints.flatMap(({ paint }) => paint.hatch?.colour ?? [])
    expect(marks.length).toBeGreaterThan(12)
    for (const ground of marks)
      expect([ground, contrast(look(colours[name]), look(ground)) >= 3]).toEqual([ground, true])
  })

  test('a hatch is seen on both sides of its stock', () => {
    for (const { name, paint, away } of paints)
      for (const { tint, hatch } of [paint, away])
        if (hatch)
          // Well beyond what is just noticed: its marks are thin.
          expect([name, lightness(look(tint)) - lightness(look(hatch.colour)) > 3 * justNoticeable]).toEqual([
            name,
            true,
          ])
  })
})

/** Whether a reader who sees no colours tells two stocks apart: by hatch, by lightness, or by the glints of film. */
function toldApart(a: Paint, b: Paint): boolean {
  if (a.hatch && b.hatch) return likeness(a.hatch, b.hatch) < 0.75
  if (a.hatch || b.hatch || a.film !== b.film) return true
  return Math.abs(lightness(a.tint) - lightness(b.tint)) > justNoticeable
}

const pairs = <T>(all: readonly T[]): [T, T][] =>
  all.flatMap((a, i) => all.slice(i + 1).map((b): [T, T] => [a, b]))

test('two hatches that are the same but shifted are alike, and lines along and across are not', () => {
  const level: Hatch = { tile: 2, turn: 0, colour: '#000000', width: 0.4, lines: [{ level: true, at: 0.3 }] }
  const lower: Hatch = { ...level, lines: [{ level: true, at: 1.4 }] }
  expect(likeness(level, lower)).toBeGreaterThan(0.95)
  expect(likeness(level, { ...level, turn: 90 })).toBeLessThan(0.2)
})

test('seventeen stocks of one card are told apart in grey', () => {
  const alike = pairs(paints)
    .filter(([a, b]) => !toldApart(a.paint, b.paint))
    .map(([a, b]) => `${a.name} and ${b.name}`)
  expect(alike).toEqual([])
})

const lessons = readdirSync('lessons')
  .filter((file) => file.endsWith('.md'))
  .flatMap((file) =>
    fillLesson(readLesson(readFileSync(`lessons/${file}`, 'utf8'))).cards.map((card) => ({
      title: `${card.card.name} of ${file}`,
      ...card,
    })),
  )
const cards = [
  ...lessons,
  ...[...foldStyles.values()].map(({ name, starter }) => ({ title: name, ...cardOf(starter) })),
]

test.each(cards)('no two stocks of a card look alike in grey: $title', ({ card: { structure } }) => {
  const paint = makePalette(structure)
  const stocks = [...new Map(structure.pieces.map(({ stock }) => [stock.name, stock])).values()]
  const alike = pairs(stocks)
    .filter(([a, b]) => !toldApart(paint(a), paint(b)))
    .map(([a, b]) => `${a.name} and ${b.name}`)
  expect(alike).toEqual([])
})

const upright = lessons.filter(({ card }) =>
  card.structure.pieces.some(({ stock }) => stock.direction === 'upright'),
)

test('some lessons use patterns with a top', () => {
  expect(upright.length).toBeGreaterThan(3)
})

test.each(upright)('a pattern with a top has its mark in every view of its face: $title', (proven) => {
  for (const { name, stock } of proven.card.structure.pieces) {
    if (stock.direction !== 'upright') continue
    expect([name, byClass(drawn('flat', proven, name).svg, 'up').length]).toEqual([name, 1])
  }
  expect(byClass(drawn('standing', proven).svg, 'up').length).toBeGreaterThan(0)
})
