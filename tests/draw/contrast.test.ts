import { describe, expect, test } from 'vitest'
import { colours } from '../../src/draw/ink.ts'
import { cardOf, cardsAt, harbour } from './cards.ts'
import { contrast } from './contrast.ts'
import { drawn, figuresOf } from './figures.ts'
import { attribute, byClass, elements, has } from './svg.ts'

test('contrast is counted as WCAG counts it', () => {
  // The bounds of the definition, and grey #767676 on white, the lightest grey that passes 4.5 (WebAIM and others).
  expect(contrast('#ffffff', '#000000')).toBe(21)
  expect(contrast('#1d2a30', '#1d2a30')).toBe(1)
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5)
})

const cards = cardsAt(['8 x 6 in'])
const svgs = cards.flatMap((card) => figuresOf(card).map((f) => f.figure.svg))
const hex = /^#[\da-f]{6}$/

/** Everything that a text or a line may lie on: tints, what is darker for looking away, and the marks of hatches. */
function grounds(): Set<string> {
  const all = new Set<string>([colours.paper, '#ffffff'])
  for (const svg of svgs)
    for (const node of elements(svg)) {
      const own = attribute(node, inHatch(node) ? 'stroke' : 'fill')
      const ground = ['stock', 'face', 'ground', 'rim'].some((c) => has(node, c))
      if ((ground || inHatch(node)) && hex.test(own)) all.add(own)
    }
  return all
}
/** The marks of a hatch have no class; everything else drawn has. */
const inHatch = (node: ReturnType<typeof elements>[number]) =>
  node.properties.className === undefined && node.tagName === 'path'

describe('on every tint, also where it is shaded and on the marks of its hatch', () => {
  const all = [...grounds()]
  test('there are tints, hatches and shades to look at', () => {
    expect(all.length).toBeGreaterThan(12)
  })
  test.each(['ink', 'slate', 'rust'] as const)('%s lines have 3:1', (name) => {
    for (const ground of all) expect([ground, contrast(colours[name], ground) >= 3]).toEqual([ground, true])
  })
})

test('the glints that tell film from paper have 3:1', () => {
  const { svg } = drawn('flat', cardOf(harbour), 'beam')
  const ground = attribute(byClass(svg, 'stock')[0] ?? svg, 'fill')
  const glints = byClass(svg, 'glint').map((line) => contrast(attribute(line, 'stroke'), ground))
  expect(glints).toHaveLength(2)
  expect(Math.min(...glints)).toBeGreaterThan(3)
})

test('every text has 4.5:1 on what it stands on', () => {
  const tintsOnly = [
    ...new Set(
      svgs.flatMap((svg) =>
        elements(svg).flatMap((node) =>
          has(node, 'ground') || has(node, 'stock') ? [attribute(node, 'fill')] : [],
        ),
      ),
    ),
  ].filter((c) => hex.test(c))
  expect(tintsOnly.length).toBeGreaterThan(3)
  for (const svg of svgs)
    for (const node of elements(svg).filter((e) => e.tagName === 'text')) {
      const colour = attribute(node, 'fill')
      // Letters stand on hatches and shades; other texts on plain tints or, if they are measures, outside the shape.
      const on = has(node, 'letter')
        ? [...grounds()]
        : has(node, 'measure')
          ? [colours.paper, '#ffffff']
          : [...tintsOnly, colours.paper]
      for (const ground of on)
        expect([colour, ground, contrast(colour, ground) >= 4.5]).toEqual([colour, ground, true])
    }
})

test('nothing is told by colour alone', () => {
  const { svg } = drawn('flat', cardOf(harbour), 'base')
  const dashes = ['valley', 'mountain'].map(
    (name) => byClass(svg, name).map((l) => attribute(l, 'strokeDashArray'))[0],
  )
  expect(new Set([...dashes, '']).size).toBe(3)
  // Numbers that matter are bold too, and so is the piece that a view points out.
  for (const node of byClass(svg, 'score')) expect(attribute(node, 'fontWeight')).toBe('600')
  const pointed = drawn('standing', cardOf(harbour), 'sea wall').svg
  const widths = byClass(pointed, 'edge').map(
    (l) => [attribute(l, 'stroke'), Number(attribute(l, 'strokeWidth'))] as const,
  )
  const accent = widths.filter(([c]) => c === colours.rust).map(([, w]) => w)
  expect(Math.min(...accent)).toBeGreaterThan(
    Math.max(...widths.filter(([c]) => c !== colours.rust).map(([, w]) => w)),
  )
})

test('stocks that are not white have hatches of their own', () => {
  const card = cardOf(harbour)
  const looks = card.card.structure.pieces.map((piece) => {
    const { svg } = drawn('flat', card, piece.name)
    const [hatch] = byClass(svg, 'hatch')
    if (!hatch) return `plain with ${byClass(svg, 'glint').length} glints`
    const [path] = elements(hatch).filter((e) => e.tagName === 'path')
    const ways = new Set(attribute(path ?? svg, 'd').match(/[hHV]/g))
    return `${attribute(path ?? svg, 'stroke')} ${[...ways].sort().join('')} ${attribute(hatch, 'transform')}`
  })
  expect(new Set(looks).size).toBe(5)
})
