import type { Element } from 'hast'
import { beforeAll, describe, expect, test } from 'vitest'
import { cutLinesOf } from '../../src/draw/cut-lines.ts'
import { drawCuttingPlan } from '../../src/draw/cutting-plan/cutting-plan.ts'
import { drawFigure } from '../../src/draw/draw.ts'
import { scaleRulers } from '../../src/draw/scale-rulers.ts'
import { tracingPages } from '../../src/draw/tracing-layout.ts'
import { tracingPage } from '../../src/draw/tracing-page.ts'
import { inches, type Unit, zero } from '../../src/length/length.ts'
import { type Locale, locales } from '../../src/wording/locales.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { blocks, cardOf } from './cards.ts'
import { collisions } from './collide.ts'
import { shownOf } from './figures.ts'
import { elements, has, text } from './svg.ts'

const others = locales.filter((locale) => !locale.startsWith('en'))

/** Words of English alone that a figure would say; none of them is a word of the other languages. */
const english =
  /\b(?:the|and|of|with|from|score[ds]?|folds?|folded|edges?|cut|left|right|lower|upper|top|back|front|inside|outside|wide|high|deep|thick|about|layers?|drawn|shut|standing|stick|bend|each|letters?|paper|sheet|piece|pieces|flush|foam|seen|side|stands?|turn|glue)\b/i

/** Names that these cards give their own parts: a lesson's own words stay as they are. */
const given = [
  'dark blue card',
  'striped paper',
  'grey card',
  'blue card',
  'vellum',
  'side strip',
  'beam',
  'sea wall',
  'sea mat',
  'sea picture',
  'door sign',
  'porthole',
  'HARBOUR',
]

const withoutGiven = (words: string): string =>
  given.reduce(
    (rest, name) => rest.replaceAll(name, '·').replaceAll(name.charAt(0).toUpperCase() + name.slice(1), '·'),
    words,
  )

/** All that a figure says, seen or read out, but the letters that are a part of the picture. */
const wordsOf = (svg: Element): string[] =>
  elements(svg)
    .filter((e) => ['text', 'title', 'desc'].includes(e.tagName) && !has(e, 'letter'))
    .map((e) => text(e).replaceAll(/[\u202f\u00a0]/g, ' '))

interface Told {
  readonly name: string
  readonly svg: Element
}

/** Every kind of figure of a card, in a language. */
function figuresIn(locale: Locale, block: string, unit: Unit): Told[] {
  const card = cardOf(block, unit)
  return shownOf(card).flatMap(([show, of]): Told[] => {
    const drawn = drawFigure(show, card, of, wordingOf(locale, unit), { dimensions: true })
    return 'svg' in drawn ? [{ name: `${show} ${of ?? ''}`, svg: drawn.svg }] : []
  })
}

const withEnvelope = (block: string): string =>
  /exploding box|match box|shadow box|tunnel|box card/.test(block) ? block : `${block}\nenvelope: {}`

/** Cards that have every kind of figure between them, flat ones and boxes, with few and with many panels. */
const shown = ['harbour', 'gate', 'pocket', 'v-fold', 'waterfall', 'tunnel', 'exploding box', 'match box']

describe.each(others)('in %s', (locale) => {
  const unit = locale === 'fr' ? 'in' : 'mm'
  describe.each(shown)('the figures of %s', (name) => {
    let figures: Told[] = []
    beforeAll(() => {
      figures = figuresIn(locale, withEnvelope(blocks[name] ?? ''), unit)
    })

    test('have no English word, and nothing that was not filled in', () => {
      expect(figures.length).toBeGreaterThan(4)
      for (const { name: figure, svg } of figures)
        for (const words of wordsOf(svg)) {
          const found = english.exec(withoutGiven(words))?.[0] ?? ''
          expect([figure, found, words]).toEqual([figure, '', words])
          expect(words).not.toMatch(/[{}]|undefined|NaN|\bnull\b/)
          expect(words.trim()).not.toBe('')
        }
    })

    test('have room for their words', () => {
      for (const { name: figure, svg } of figures) expect([figure, collisions(svg)]).toEqual([figure, []])
    })

    test('write decimals as the language does', () => {
      for (const { svg } of figures) for (const words of wordsOf(svg)) expect(words).not.toMatch(/\d\.\d/)
    })
  })

  test('a cutting plan, templates and rulers', () => {
    const wording = wordingOf(locale, 'mm')
    const plan = drawCuttingPlan(
      {
        stock: 'white card',
        sheet: { width: inches(12), height: inches(12) },
        placed: [{ name: 'base', x: zero, y: zero, width: inches(8), height: inches(6), upright: true }],
        cuts: [{ across: 'width', at: inches(8), from: zero, to: inches(12) }],
      },
      wording,
    )
    const pages = tracingPages(cutLinesOf(cardOf(blocks.harbour ?? '').card), { width: 190, height: 240 })
    const page = pages.map((traced) => tracingPage(traced, { width: 190, height: 240 }, wording))
    const said = [plan.svg, ...page, scaleRulers(wording)].flatMap((svg) => [
      ...wordsOf(svg),
      String(svg.properties.ariaLabel ?? ''),
    ])
    expect(said.length).toBeGreaterThan(10)
    for (const words of said)
      expect([english.exec(withoutGiven(words))?.[0] ?? '', words]).toEqual(['', words])
  })
})

test('the same card is told in each language', () => {
  const { harbour = '' } = blocks
  const alternatives = locales.map((locale) => {
    const drawn = drawFigure('flat', cardOf(harbour), 'base', wordingOf(locale, 'in'))
    return 'alternative' in drawn ? drawn.alternative : ''
  })
  expect(alternatives[0]).toMatch(
    /^Base, dark blue card, laid flat with the inside face up: 10 × 6 in, width first\./,
  )
  expect(alternatives[2]).toMatch(
    /^Grundkarte, dark blue card, flach hingelegt, Innenseite oben: 10 × 6 in, Breite/,
  )
  expect(alternatives[3]).toMatch(
    /^Base, dark blue card, à plat, face intérieure vers le haut\s: 10 × 6 po, largeur/,
  )
  expect(alternatives[4]).toMatch(
    /^Base, dark blue card, en plano, con la cara interior hacia arriba: 10 × 6 in, /,
  )
})
