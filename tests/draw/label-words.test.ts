import { describe, expect, test } from 'vitest'
import { colours } from '../../src/draw/ink.ts'
import { labelsOfKind } from '../../src/lesson/figures/labels-of-kind.ts'
import type { FigureKind } from '../../src/lesson/nodes.ts'
import { blocks, cardOf } from './cards.ts'
import { collisions } from './collide.ts'
import { drawn, textsOf } from './figures.ts'
import { byClass } from './svg.ts'

const harbour = cardOf(blocks.harbour ?? '')
const flat = (...labels: string[]) => drawn('flat', harbour, 'base', 'in', { labels: labels as never })

describe('a flat piece', () => {
  test('without label= has all its numbers', () => {
    const { svg } = drawn('flat', harbour, 'base')
    expect(textsOf(svg, 'measure')).toEqual(expect.arrayContaining(['1', '2', '8', '9', '10 in', '6 in']))
  })

  test.each([
    [['mountains'], ['1', '9']],
    [['valleys'], ['2', '8']],
    [['scores'], ['1', '2', '8', '9']],
    [['size'], ['10 in', '6 in']],
    [
      ['size', 'valleys'],
      ['2', '8', '10 in', '6 in'],
    ],
    [['none'], []],
    [['none', 'size'], []],
  ])('label=%s has the numbers %s and no others', (labels, numbers) => {
    const { svg } = flat(...labels)
    expect(textsOf(svg, 'measure').toSorted()).toEqual(numbers.toSorted())
    // Every line is still drawn.
    expect(byClass(svg, 'crease')).toHaveLength(byClass(drawn('flat', harbour, 'base').svg, 'crease').length)
  })

  test('the scores of a step are bold and rust, and the legend says that the others are not meant', () => {
    const { svg, alternative } = flat('mountains')
    for (const node of byClass(svg, 'score'))
      expect(node.properties).toMatchObject({ fill: colours.rust, fontWeight: '600' })
    const legend = textsOf(svg, 'legend').join(' ')
    expect(legend).toContain('mountain: score this side at 1 and 9 in')
    expect(legend).toContain('valley: not in this step')
    expect(alternative).toContain('1 in from the left edge, mountain')
    expect(alternative).not.toContain('2 in from the left edge')
    expect(alternative).toContain('Drawn without numbers: the valley folds.')
  })

  test('names are picked by themselves', () => {
    expect(textsOf(flat('names').svg, 'name')).toContain('floor')
    expect(textsOf(flat('scores').svg, 'name')).toEqual([])
  })
})

test('a layer in its place has its borders, its size or its names', () => {
  const place = (label: string) => drawn('place', harbour, 'backdrop', 'in', { labels: [label as never] })
  // Which way up the pattern is, is neither a number nor a name.
  expect(textsOf(place('borders').svg, 'name')).toEqual(['up'])
  expect(textsOf(place('borders').svg, 'border')).toEqual(['1/16 in', '1/16 in'])
  expect(textsOf(place('size').svg, 'border')).toEqual([])
  expect(textsOf(place('size').svg, 'name').join()).toMatch(/×/)
  expect(textsOf(place('names').svg, 'name')).toEqual(expect.arrayContaining(['backdrop', 'floor']))
})

test('the standing card has its size when it is asked for', () => {
  const standing = (...labels: string[]) =>
    textsOf(drawn('standing', harbour, undefined, 'in', { labels: labels as never }).svg, 'legend')
  expect(standing('size').join(' ')).toContain('stands 8 in wide')
  expect(standing('none')).toEqual([])
})

const kinds: readonly FigureKind[] = ['flat', 'place', 'standing', 'envelope']
const tried = ['harbour', 'gate', 'easel', 'v-fold', 'box step', 'exploding box']
const cards = tried.map((name) => cardOf(blocks[name] ?? ''))
test.each(kinds)('%s: none leaves no number, and no label touches another whatever is picked', (kind) => {
  for (const card of cards) {
    const subjects =
      kind === 'flat'
        ? card.card.structure.pieces.map((piece) => piece.name)
        : kind === 'place'
          ? card.card.layers.map((layer) => layer.name)
          : [undefined]
    if ((kind === 'envelope' && !card.card.envelope) || (kind === 'standing' && !card.proof.standing))
      continue
    for (const of of subjects) {
      for (const label of labelsOfKind(kind)) {
        const { svg } = drawn(kind, card, of, card.card.unit, { labels: [label] })
        expect(collisions(svg)).toEqual([])
        if (label === 'none') expect(textsOf(svg, 'measure')).toEqual([])
      }
    }
  }
})
