import { describe, expect, test } from 'vitest'
import { labelsOfKind } from '../../src/lesson/figures/labels-of-kind.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import type { Wishes } from '../../src/lesson/lesson.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { stocksOf } from '../../src/lesson/stocks.ts'
import { rooms } from '../../src/publish/figure.ts'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { collisions } from '../draw/collide.ts'
import { textsOf } from '../draw/figures.ts'
import { lessonNamed, lessonNames } from '../draw/lesson-cards.ts'

const head = (more = '') => `---
title: A
${more}---

\`\`\`card
fold: side
closed: 5 x 7 in
base: {stock: blue card}
layers:
  picture: {on: front, border: 1/4 in, stock: white card}
pieces:
  tag: {size: 2 x 3 in, count: 2, stock: white card}
\`\`\`

1. Cut the base to {base.size}.

`
const sheet = (of: string | undefined, more = '', wishes: Wishes = {}) =>
  figuresOf(fillLesson(readLesson(head(more)), wishes))('sheet', of, rooms.across)

function drawn(...about: Parameters<typeof sheet>) {
  const figure = sheet(...about)
  if ('findings' in figure) throw new Error(figure.findings.map(({ message }) => message).join())
  return figure
}

describe('a figure of a sheet', () => {
  test('has all pieces of one kit that are of its stock', () => {
    expect(drawn('white card').alternative).toMatch(
      /^A sheet of white card, 12 × 12 in, with 1 × picture, 4 1\/2 × 6 1\/2 in and 2 × tag, /,
    )
  })
  test.each(['picture', 'tag'])('`of=%s` is the sheet that this piece is cut from', (of) => {
    expect(drawn(of).alternative).toBe(drawn('white card').alternative)
  })
  test('without `of` it is that of the base', () => {
    expect(drawn(undefined).alternative).toMatch(/^A sheet of blue card, .* 1 × base, 10 × 7 in/)
  })
  test('is 12 × 12 in, or A4 in millimetres, unless the lesson says it, and tells which', () => {
    const told = (more?: string, wishes?: Wishes) =>
      textsOf(drawn('white card', more, wishes).svg, 'legend').at(-1)
    expect(told()).toBe('One kit from one sheet of white card, 12 × 12 in.')
    expect(told('', { units: 'mm' })).toBe('One kit from one sheet of white card, 210 × 297 mm.')
    expect(told('sheets: {white card: 9 x 12 in}\n')).toBe('One kit from one sheet of white card, 9 × 12 in.')
    expect(told('sheets: 8 x 12 in\n')).toBe('One kit from one sheet of white card, 8 × 12 in.')
    expect(told('sheets: {blue card: A3}\n')).toBe('One kit from one sheet of white card, 12 × 12 in.')
  })
  test('a sheet that is too small is told, with what would help', () => {
    expect(sheet('blue card', 'sheets: A5\n')).toEqual({
      findings: [
        {
          rule: 'figure-not-drawn',
          severity: 'warning',
          message: expect.stringMatching(/^`base`, 10 × 7 in, does not come out of one sheet of blue card/),
          suggestion: expect.stringContaining('`sheets: {blue card: 18 x 24 in}`'),
        },
      ],
    })
  })
  test('a piece in a sheet of its own size is used whole', () => {
    expect(drawn('blue card', 'sheets: 10 x 7 in\n').alternative).toMatch(/It is used whole\.$/)
  })
  test.each(labelsOfKind('sheet'))('label=%s picks', (label) => {
    const lesson = fillLesson(readLesson(head()))
    const figure = figuresOf(lesson)('sheet', 'white card', { ...rooms.across, labels: [label] })
    if ('findings' in figure) throw new Error('Expected a figure')
    const names = textsOf(figure.svg, 'name').join()
    expect(names.includes('picture')).toBe(label === 'names' || label === 'all')
    expect(names.includes('×')).toBe(label === 'size' || label === 'all')
    expect(textsOf(figure.svg, 'cut-number').length > 0).toBe(label === 'cuts' || label === 'all')
    expect(collisions(figure.svg).filter((words) => !/^"\d+" touches the line/.test(words))).toEqual([])
  })
})

describe('what can be said of sheets', () => {
  const told = (more: string, body = '') =>
    fillLesson(readLesson(head(more) + body))
      .findings.filter(({ rule }) => /unknown|value|size/.test(rule))
      .map(({ message, suggestion, place }) => [place?.line, message, suggestion])
  test('a stock that nothing is cut from is probably misspelt', () => {
    expect(told('sheets: {blue crad: A4}\n')).toEqual([
      [3, 'Nothing is cut from `blue crad`', 'Write `blue card`'],
    ])
  })
  test.each(['sheets: {blue card: 0 x 3 in}\n', 'sheets: {blue card: [A4, A3]}\n'])(
    '%s has a cure',
    (more) => {
      const [one] = told(more)
      expect(one?.[0]).toBe(3)
      expect(one?.[2]).toContain('sheets: 12 x 12 in')
    },
  )
  test('a figure may name a stock, in a figure of a sheet only', () => {
    const figure = (show: string, of: string) => told('', `   ::figure[It]{show=${show} of="${of}"}\n`)
    expect(figure('sheet', 'white card')).toEqual([])
    expect(figure('flat', 'white card').map(([, message]) => message)).toEqual([
      'Unexpected name `white card`, expected a piece of the card',
    ])
    expect(figure('sheet', 'white crad').map(([, , cure]) => cure)).toEqual(['Write `white card`'])
  })
})

test.each(lessonNames)('no label touches another in the sheets of %s', { timeout: 60_000 }, (name) => {
  const prints = (['in', 'mm'] as const).map((units) => fillLesson(lessonNamed(name), { units }))
  for (const lesson of prints)
    for (const stock of stocksOf(lesson.cards)) {
      const figure = figuresOf(lesson)('sheet', stock, rooms.across)
      if ('findings' in figure) continue
      const found = collisions(figure.svg).filter((words) => !/^"\d+" touches the line/.test(words))
      expect(found).toEqual([])
    }
})
