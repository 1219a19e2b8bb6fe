import { describe, expect, test } from 'vitest'
import type { Figure } from '../../src/draw/figure.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'
import { type Draw, fitFigure, rooms } from '../../src/publish/figure.ts'
import { collisions } from './collide.ts'
import { drawn, shownOf } from './figures.ts'
import { lessonNamed, lessonNames, printsOf } from './lesson-cards.ts'

/** All figures of a card as the page has them: beside a step's text or across the page, and on the first page. */
function printed(card: ProvenCard): { name: string; figure: Figure }[] {
  const draw: Draw = (show, of, options) => drawn(show, card, of, card.card.unit, options)
  const inSteps = shownOf(card).flatMap(([show, of]) => {
    const fitted = fitFigure(draw, show, of, {})
    return 'findings' in fitted ? [] : [{ name: `${show} ${of ?? ''}`, figure: fitted.figure }]
  })
  const covers = (['standing', 'closed'] as const).filter((show) => card.proof[show])
  return [
    ...inSteps,
    ...covers.map((show) => ({
      name: `${show}, on the first page`,
      figure: drawn(show, card, undefined, card.card.unit, rooms.cover),
    })),
  ]
}

/** Words on words, on lines and beyond the rim in the figures of a print, and how many figures it has. */
const troubles = (cards: readonly ProvenCard[]): { figures: number; found: string[] } => {
  const all = cards.flatMap(printed)
  return {
    figures: all.length,
    found: all.flatMap(({ name, figure }) => collisions(figure.svg).map((words) => `${name}: ${words}`)),
  }
}

describe.each(lessonNames)('no label touches another or a line in any figure of %s', (name) => {
  // Its own size, those that it is offered in, and others that it can be made in.
  const prints = printsOf(lessonNamed(name), 5)

  test('in five sizes and both units', () => {
    expect(prints.map(({ unit }) => unit)).toEqual(Array(5).fill(['in', 'mm']).flat())
  })

  test.each(prints)('$title', { timeout: 240_000 }, ({ cards }) => {
    const { figures, found } = troubles(cards)
    expect(figures).toBeGreaterThan(8)
    expect(found).toEqual([])
  })
})
