import { expect, test } from 'vitest'
import { figuresOf } from '../../src/publish/figures-of.ts'
import type { HandoutView } from '../../src/publish/view.ts'
import { handoutView } from '../../src/publish/view.ts'
import { drawStub, filled, pier, pierText } from './lesson.ts'

const text = (value: { html: string } | null | undefined) =>
  value?.html.replace(/<[^>]*>/g, '').replace(/[\u00a0\u202f]/g, ' ')
const pieces = (view: HandoutView) =>
  view.cards[0]?.pieces.map(({ name, stock, count, size, scores }) => [
    name,
    stock,
    count,
    text(size),
    scores.map(({ fold, at, from }) => `${fold} ${text(at)} ${from}`),
  ])

test('the first page says what it becomes, for whom, and how long it takes', () => {
  const { view } = handoutView(pier(), drawStub)
  expect(view).toMatchObject({
    title: 'Gulls over the “pier” & <sand>',
    lang: 'en-GB',
    level: 'For beginners',
    time: 'about 30\u00a0min',
    unit: 'inches',
    several: false,
  })
  expect([text(view.grid), text(view.cards[0]?.shut), view.foot.print]).toEqual([
    '1/16 in',
    '8 × 6 in',
    '8\u00a0×\u00a06\u00a0in card, measures in inches',
  ])
  expect(view.cover?.html).toContain('figure-standing')
})

// An 8 × 6 bridge card with 1 in legs: base 10 × 6 scored at 1, 2, 8 and 9, floor layer 5 7/8 × 6. Common practice.
test('the cutting table has each piece, its size and its scores', () => {
  expect(pieces(handoutView(pier(), drawStub).view)).toEqual([
    ['base', 'sand card', 1, '10 × 6 in', ['valley 2 and 8 in left', 'mountain 1 and 9 in left']],
    ['sky', 'patterned paper', 1, '5 7/8 × 6 in', []],
    ['gull strip', 'vellum', 1, '8 × 2 1/2 in', []],
    ['pier', 'grey card', 1, '8 × 1 1/4 in', []],
    // The trade uses 11 × 11 for this card; its thickness is taken in here.
    ['envelope', 'envelope paper', 1, '11 1/8 × 11 1/8 in', []],
  ])
})

test('a print in millimetres speaks of millimetres throughout', () => {
  const { view } = handoutView(pier({ units: 'mm' }), drawStub)
  expect(view.foot.print).toMatch(/^\d+\u00a0×\u00a0\d+\u00a0mm card, measures in millimetres$/)
  expect(JSON.stringify(view)).not.toMatch(/\d(\u00a0| )in\b/)
})

test('what is needed is in groups, each with something in it', () => {
  const { view } = handoutView(pier(), drawStub)
  const needs = view.needs.map((group) => [
    group.for,
    group.items.map(({ item, amount }) => [item, text(amount)]),
  ])
  expect(needs).toEqual([
    [
      'paper',
      [
        ['sand card', 'base'],
        ['patterned paper', 'sky'],
        ['vellum', 'gull strip'],
        ['grey card', 'pier'],
        ['envelope paper', 'envelope'],
      ],
    ],
    [
      'each',
      [
        ['double-sided tape', '24 in'],
        ['pearl dots', '5'],
        ['glue', 'a little'],
      ],
    ],
    [
      'shared',
      [
        ['scoring board', '1 between 3'],
        ['needle', '1 between 6'],
      ],
    ],
    ['tutor', [['finished sample', '1']]],
  ])
  const bare = filled(pierText.replace(/```supplies[^`]*```/, ''))
  expect(handoutView(bare, drawStub).view.needs.map((group) => group.for)).toEqual(['paper'])
})

test('letters stand at their marks from the left end', () => {
  const { view } = handoutView(pier(), drawStub)
  const [lettering] = view.cards[0]?.lettering ?? []
  expect(lettering?.letters.map(({ letter }) => letter).join('')).toBe('GULLS')
  // By hand: 8 - 2 · 1/4 - 5 · 5/8 = 4 3/8 for four gaps, 1 1/16 each; the 1/8 left over goes half to each end.
  expect([text(lettering?.gap), text(lettering?.letters[0]?.at)]).toEqual(['1 1/16 in', '5/16'])
})

test('the envelope is told, unless the lesson tells it', () => {
  const { view } = handoutView(pier(), drawStub)
  expect([view.envelope, view.cards[0]?.envelope?.figure?.html]).toEqual([
    true,
    expect.stringContaining('figure-envelope'),
  ])
  const own = filled(`${pierText}\n## The envelope\n\n1. Cut it to {envelope.sheet}.\n`)
  expect(handoutView(own, drawStub).view).toMatchObject({
    envelope: false,
    cards: [{ envelope: { figure: null } }],
  })
})

test('a lesson without a card has no figures and no table', () => {
  const { view } = handoutView(
    filled('---\ntitle: A\nlevel: beginner\nunits: in\n---\n\n1. Fold.\n'),
    drawStub,
  )
  expect([view.cover, view.cards, view.needs, view.summary, view.time, view.envelope]).toEqual([
    null,
    [],
    [],
    null,
    null,
    false,
  ])
})

test('nothing undefined reaches a page', () => {
  const lesson = pier()
  const { view } = handoutView(lesson, figuresOf(lesson))
  const look = (value: unknown, path: string): void => {
    expect(value, path).not.toBeUndefined()
    expect(value, path).not.toBeNaN()
    if (typeof value === 'string') expect(value, path).not.toMatch(/undefined|NaN|\[object/)
    if (typeof value === 'object' && value !== null)
      for (const [key, item] of Object.entries(value)) look(item, `${path}.${key}`)
  }
  look(view, 'view')
})
