import { describe, expect, test } from 'vitest'
import { hingesOf, scoresOfPiece } from '../../src/card/scores.ts'
import { slantsOfPiece } from '../../src/card/slants.ts'
import type { Value } from '../../src/length/evaluate.ts'
import { formatBare, formatLength } from '../../src/length/format.ts'
import { cardOf, cardsAt, gate, harbour } from './cards.ts'
import { drawn, textsOf } from './figures.ts'
import { attribute, byClass, has, number, text } from './svg.ts'

const everyCard = cardsAt()

const lengths = (value: Value) => (value.kind === 'lengths' ? value.value : [])
const at = { start: 0, end: 0 }

describe.each(everyCard)('the base of $title', (card) => {
  const { svg, alternative } = drawn('flat', card, 'base')
  const measure = (part: string) => card.card.names.lookup(['base', part], at)

  test('has a line for each score, dashed for a valley and dash-dot for a mountain', () => {
    const creases = byClass(svg, 'crease')
    const dashes = (name: string) =>
      creases.filter((line) => has(line, name)).map((line) => attribute(line, 'strokeDashArray'))
    const folds = hingesOf(card.card.structure, 'base').map(({ fold }) => fold)
    // On a short line the dashes are shorter, never longer.
    const shortened = {
      valley: /^(2|[01](\.\d+)?),1$/,
      mountain: /^(4|[0-3](\.\d+)?),0\.8,0\.3,0\.8$/,
    }
    for (const fold of ['valley', 'mountain'] as const)
      expect(dashes(fold)).toEqual(
        folds.filter((own) => own === fold).map(() => expect.stringMatching(shortened[fold])),
      )
  })

  test('shows a gap even in a short score, so that it is told from a cut', () => {
    for (const score of byClass(svg, 'crease')) {
      const [x1, y1, x2, y2] = ['x1', 'y1', 'x2', 'y2'].map((name) => number(score, name)) as [
        number,
        number,
        number,
        number,
      ]
      const [dash = 0, gap = 0] = attribute(score, 'strokeDashArray').split(',').map(Number)
      // What is shorter than two of the shortest dashes and a gap has one of them.
      expect(dash).toBeLessThanOrEqual(Math.max(0.4, (Math.hypot(x2 - x1, y2 - y1) - gap) / 2 + 0.001))
    }
  })

  test("prints the card's own measures", () => {
    const scores = lengths(measure('scores'))
    expect(scores.length > 0).toBe(scoresOfPiece(card.card.structure, 'base').length > 0)
    const ends = slantsOfPiece(card.card.structure, 'base').flatMap(({ from, to }) => [from, to])
    const said = (['width', 'height'] as const).flatMap((along) => {
      const marks = [
        ...lengths(measure(along === 'width' ? 'uprights' : 'levels')),
        ...ends.map(({ x, y }) => (along === 'width' ? x : y)),
      ]
      const whole = measure(along)
      const inside = marks.filter((x) => x.gt(0) && whole.kind === 'length' && x.lt(whole.value))
      return [...new Set(inside.map((length) => formatBare(length, card.unit)))]
    })
    // Marks along one edge stand before those along the other.
    expect(textsOf(svg, 'score').toSorted()).toEqual(said.toSorted())
    const whole = ['width', 'height'].map((part) => {
      const value = measure(part)
      return value.kind === 'length' ? formatLength(value.value, card.unit) : part
    })
    expect(textsOf(svg, 'measure')).toEqual(expect.arrayContaining(whole))
    for (const length of scores)
      expect(alternative).toMatch(
        new RegExp(`\\b${formatLength(length, card.unit)} from the (left|lower) edge`),
      )
  })

  test('is to scale, and no larger than its room', () => {
    const outline = byClass(svg, 'outline')[0]
    const [x, y] = ['0', '1'].map((axis) => {
      const all = [...attribute(outline ?? svg, 'd').matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)]
      const values = all.map((m) => Number(m[Number(axis) + 1]))
      return Math.max(...values) - Math.min(...values)
    }) as [number, number]
    const size = measure('size')
    const ratio = size.kind === 'size' ? size.value.width.div(size.value.height).valueOf() : 0
    expect(x / y).toBeCloseTo(ratio, 2)
    const [, , width = 0] = attribute(svg, 'viewBox').split(' ').map(Number)
    expect(width).toBeLessThanOrEqual(82)
  })
})

test('a number stands at the end of the line of its own score', () => {
  const { svg } = drawn('flat', cardOf(harbour), 'base')
  const creases = byClass(svg, 'crease').map((line) => number(line, 'x1'))
  const numbers = byClass(svg, 'score').map((node) => number(node, 'x'))
  expect(numbers).toHaveLength(4)
  for (const [i, x] of numbers.entries()) expect(x).toBeCloseTo(creases.sort((a, b) => a - b)[i] ?? 0, 3)
})

test('says which side to score, and to turn the sheet so that the left edge stays on the left', () => {
  const { svg } = drawn('flat', cardOf(harbour), 'base')
  const words = textsOf(svg, 'legend').join(' ')
  expect(words).toContain('mountain: score this side at 1 and 9 in')
  expect(words).toContain('valley: turn over top to bottom, score the back at 2 and 8 in')
})

test('level creases are measured from the lower edge, and the sheet is turned left to right', () => {
  const easel = everyCard.find((c) => c.title.startsWith('easel, 6 x 6 in, in in'))
  const { svg, alternative } = drawn('flat', easel ?? cardOf(harbour), 'base')
  expect(textsOf(svg, 'legend').join(' ')).toContain(
    'valley: turn over left to right, score the back at 6 in',
  )
  expect(alternative).toContain('6 in from the lower edge, valley, scored on the back')
})

test('a window is cut solid, and its edges are measured', () => {
  const { svg } = drawn('flat', cardOf(harbour), 'base')
  expect(
    byClass(svg, 'window').map((w) => [attribute(w, 'strokeWidth'), attribute(w, 'strokeDashArray')]),
  ).toEqual([['0.5', '']])
  expect(textsOf(svg, 'measure')).toEqual(expect.arrayContaining(['4', '6', '2 1/4', '3 3/4']))
})

test('letters stand at their marks', () => {
  const card = cardOf(harbour)
  const { svg, alternative } = drawn('flat', card, 'sea wall')
  expect(textsOf(svg, 'letter')).toEqual(['H', 'A', 'R', 'B', 'O', 'U', 'R'])
  const marks = lengths(card.card.names.lookup(['name', 'marks'], at)).map((x) => formatBare(x, 'in'))
  expect(textsOf(svg, 'score')).toEqual(marks)
  expect(alternative).toContain('Letters HARBOUR.')
})

test('a fraction is a real one, with a space that never breaks before it', () => {
  const { svg } = drawn('flat', cardOf(gate), 'sea mat')
  const width = byClass(svg, 'measure').find((node) => text(node).endsWith('in'))
  expect(text(width ?? svg)).toBe('4\u202f5/8 in')
  const fraction = byClass(svg, 'frac')[0]
  expect([text(fraction ?? svg), attribute(fraction ?? svg, 'style')]).toEqual([
    '5/8',
    'font-feature-settings: "frac"',
  ])
})

test('a loose piece has its own outline and says how many to cut', () => {
  const { svg, alternative } = drawn('flat', cardOf(gate), 'door sign')
  expect(byClass(svg, 'outline')).toHaveLength(1)
  expect(textsOf(svg, 'measure')).toEqual(['1 1/4 in', '3/4 in'])
  expect(alternative).toContain('Cut 2 of them.')
})
