import type { Element } from 'hast'
import { describe, expect, test } from 'vitest'
import type { FilledLesson } from '../../src/lesson/lesson.ts'
import { figuresOf } from '../../src/publish/figures-of.ts'
import { lessonFigures } from '../../src/publish/lesson-figures.ts'
import { byClass, elements, number, text } from '../draw/svg.ts'
import { filled } from './lesson.ts'

const card = `---
title: Two figures
---

\`\`\`card
fold: bridge
closed: 7 x 5 in
base: {stock: white card}
layers:
  backdrop: {on: floor, border: {sides: 1/4 in, ends: 1/8 in}, stock: blue card}
  strip: {on: left tab, border: {sides: 1/8 in, ends: 1/4 in}, stock: red card}
pieces:
  star: {size: 1/4 x 1/4 in, stock: gold card}
\`\`\`

`

/** The figures of a lesson by what they show, in their order. */
function drawnIn(body: string): { show: string; of: string | undefined; svg: Element }[] {
  const lesson = filled(card + body)
  const { figures, findings } = lessonFigures(lesson.tree, lesson.cards, figuresOf(lesson))
  expect(findings).toEqual([])
  return [...figures].map(([{ show, of }, { drawn }]) => ({ show, of, svg: drawn.figure.svg }))
}

/** How wide a path is, in mm of the page. */
function widthOf(svg: Element, name: string): number {
  const xs = byClass(svg, name).flatMap((node) =>
    [...String(node.properties.d).matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x)),
  )
  return Math.max(...xs) - Math.min(...xs)
}

const inch = 25.4
/** Millimetres on the page for one of the card, measured in the drawing by what is known of the piece. */
const scales: Record<string, (svg: Element) => number> = {
  'flat base': (svg) => widthOf(svg, 'outline') / (9 * inch),
  'flat star': (svg) => widthOf(svg, 'outline') / (0.25 * inch),
  'flat backdrop': (svg) => widthOf(svg, 'outline') / (4.5 * inch),
  'place backdrop': (svg) => widthOf(svg, 'layer') / (4.5 * inch),
  'place strip': (svg) => widthOf(svg, 'layer') / (0.5 * inch),
}
const scalesIn = (body: string): number[] =>
  drawnIn(body).map(({ show, of, svg }) => scales[`${show} ${of}`]?.(svg) ?? Number.NaN)

const step = (n: number, ...figures: string[]) =>
  `${n}. Do it.\n\n${figures.map((figure) => `   ::figure[a]{${figure}}\n\n`).join('')}`
const [base, backdrop, flat, strip, star] = [
  'show=flat of=base',
  'show=place of=backdrop',
  'show=flat of=backdrop',
  'show=place of=strip',
  'show=flat of=star',
]

/** What each would have alone. */
const alone = (figure: string): number => scalesIn(step(1, figure))[0] ?? Number.NaN

test('alone each figure is as large as its room allows', () => {
  const all = [base, flat, backdrop].map(alone)
  expect(new Set(all.map((scale) => scale.toFixed(2))).size).toBe(3)
})

describe('one scale, the smallest, for', () => {
  test.each([
    ['figures of one step', step(1, base, flat)],
    ['steps that follow each other', step(1, base) + step(2, flat)],
    ['three of them, laid flat and put in place', step(1, flat) + step(2, backdrop) + step(3, base)],
  ])('%s', (_, body) => {
    const found = scalesIn(body)
    const least = Math.min(...[base, flat, backdrop].filter((one) => body.includes(one)).map(alone))
    for (const scale of found) expect(Math.abs(scale / least - 1)).toBeLessThan(0.002)
  })
})

describe('their own scales for', () => {
  test.each([
    ['steps with another between them', step(1, base) + step(2) + step(3, flat)],
    ['steps of two stages', `## One\n\n${step(1, base)}\n## Two\n\n${step(2, flat)}`],
  ])('%s', (_, body) => {
    expect(scalesIn(body)).toEqual([alone(base), alone(flat)])
  })

  test('a piece so small that its measures would have no room', () => {
    const found = scalesIn(step(1, base, star, flat))
    expect(found[1]).toBeCloseTo(alone(star), 5)
    expect(found[0]).toBeCloseTo(alone(base), 3)
    expect(found[2]).toBeCloseTo(alone(base), 3)
  })
})

test('what is written stays, and in the same size', () => {
  const words = (svg: Element) =>
    elements(svg)
      .filter(({ tagName }) => tagName === 'text')
      .map((node) => [text(node), number(node, 'fontSize')] as const)
  const lone = drawnIn(step(1, flat))[0]
  const shared = drawnIn(step(1, base, flat))[1]
  expect(shared && words(shared.svg)).toEqual(lone && words(lone.svg))
  const strips = drawnIn(step(1, strip, base))
  for (const { svg } of strips) for (const [, size] of words(svg)) expect(size).toBeGreaterThan(2.6)
})

test('two cards of a lesson do not share', () => {
  const two = `${card}\`\`\`card small\nfold: side\nclosed: 3 x 4 in\n\`\`\`\n\n`
  const lesson: FilledLesson = filled(
    two + step(1, 'show=flat of="card.base"') + step(2, 'show=flat of="small.base"'),
  )
  const { figures } = lessonFigures(lesson.tree, lesson.cards, figuresOf(lesson))
  const [first, second] = [...figures.values()].map(({ drawn }) => drawn.figure.scale)
  expect(first).toBeLessThan((second ?? 0) * 0.9)
})
