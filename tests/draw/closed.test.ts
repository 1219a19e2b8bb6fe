import { expect, test } from 'vitest'
import type { LabelWord } from '../../src/lesson/label-words.ts'
import { blocks, cardOf, harbour } from './cards.ts'
import { drawn, textsOf } from './figures.ts'
import { attribute, byClass, elements, has, loopsOf } from './svg.ts'

/** The lower ends of all sheets of a shut card on paper, in the order in which they are painted. */
function lowerEnds(name: string) {
  const proven = cardOf(blocks[name] ?? '')
  const { svg, alternative } = drawn('closed', proven)
  const paths = byClass(svg, 'face').filter((node) => node.tagName === 'path')
  return {
    proven,
    svg,
    alternative,
    ends: paths.map((path) =>
      Math.max(
        ...loopsOf(path)
          .flat()
          .map(([, y]) => y),
      ),
    ),
  }
}

test('what lies deeper peeks out lower, in the order of the layers', () => {
  for (const name of ['side', 'letter', 'accordion', 'double gate']) {
    const { proven, ends } = lowerEnds(name)
    const closed = proven.proof.closed
    const order = [...(closed?.order ?? [])].reverse()
    expect(ends.length).toBe(order.length)
    const atEdge = order.flatMap((plate, i) => {
      const laid = closed?.plates.find((one) => one.plate === plate)
      return laid?.bottom.equals(0) ? [ends[i] ?? 0] : []
    })
    expect(atEdge.length).toBeGreaterThan(1)
    expect(atEdge).toEqual([...atEdge].sort((a, b) => b - a))
  }
})

test('each sheet is as much thicker as the figure says: from its front to its back', () => {
  const { svg, proven } = lowerEnds('side')
  const times = Number(/drawn (\d+) times/.exec(textsOf(svg, 'legend').join(' '))?.[1])
  const [front] = byClass(svg, 'dimension')
  const scale =
    Math.abs(Number(attribute(front as never, 'x2')) - Number(attribute(front as never, 'x1'))) / (5 * 25.4)
  const bottom = (name: string) =>
    elements(svg)
      .filter((e) => has(e, name))
      .map((e) =>
        Math.max(
          ...loopsOf(e)
            .flat()
            .map(([, y]) => y),
        ),
      )
  const order = [...(proven.proof.closed?.order ?? [])].reverse()
  for (const [i, plate] of order.entries()) {
    const piece = proven.card.structure.plates.find(({ name }) => name === plate)?.piece
    const caliper =
      proven.card.structure.pieces.find(({ name }) => name === piece)?.stock.caliper.valueOf() ?? 0
    const thick = (bottom('underside')[i] ?? 0) - (bottom('face')[i] ?? 0)
    expect(thick).toBeCloseTo(0.7 * caliper * scale * times, 2)
  }
})

test('folds are drawn round and said, cut edges are not', () => {
  const count = (name: string) => byClass(lowerEnds(name).svg, 'spine').length
  expect([count('side'), count('gate'), count('accordion'), count('double gate')]).toEqual([1, 2, 3, 3])
  expect(lowerEnds('side').alternative).toContain('It is folded at the left edge, drawn round.')
  expect(lowerEnds('gate').alternative).toContain('It is folded at the left and right edges, drawn round.')
})

test('only the labels that are picked stand in it', () => {
  const labels = (...words: LabelWord[]) =>
    drawn('closed', cardOf(harbour), undefined, 'in', { labels: words }).svg
  expect(textsOf(labels('size'), 'measure')).toEqual(['8 in', '6 in'])
  expect(textsOf(labels('size'), 'legend').join(' ')).not.toContain('about')
  expect(byClass(labels('thickness'), 'measure')).toEqual([])
  expect(textsOf(labels('thickness'), 'legend').join(' ')).toContain('about 1/8 in thick')
  expect(byClass(labels('none'), 'measure')).toEqual([])
})
