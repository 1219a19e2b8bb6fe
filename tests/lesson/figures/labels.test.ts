import { describe, expect, test } from 'vitest'
import { figureTargets } from '../../../src/lesson/figure-target.ts'
import { labelsOfKind } from '../../../src/lesson/figures/labels-of-kind.ts'
import { neededLabels } from '../../../src/lesson/figures/needed-labels.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { labelWords } from '../../../src/lesson/label-words.ts'
import { type FigureKind, figureKinds } from '../../../src/lesson/nodes.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const head = '---\ntitle: Shells\n---\n\n'
const read = (figure: string) => {
  const text = head + figure
  const { tree, findings } = readLesson(text)
  const told = findings.map(({ place, rule, suggestion }) => [
    rule,
    text.slice(place?.offset, place?.end),
    suggestion,
  ])
  return { node: tree.children[0], told }
}

describe('label=', () => {
  test.each([
    ['label="scores size"', ['scores', 'size']],
    ['label="scores, size"', ['scores', 'size']],
    ['label=scores,size', ['scores', 'size']],
    ["label=' mountains\tnames '", ['mountains', 'names']],
    ['label=none', ['none']],
  ])('%s', (written, labels) => {
    const { node, told } = read(`::figure[a]{show=flat of=base ${written}}`)
    expect(node).toMatchObject({ type: 'figure', show: 'flat', of: 'base', labels })
    expect(told).toEqual([])
  })

  test('left out, it says nothing', () => {
    expect(read('::figure[a]{show=flat}').node).not.toHaveProperty('labels')
  })

  test.each([
    ['{show=flat label="size scors"}', 'scors', 'Write `scores`'],
    ['{show=flat label=Size}', 'Size', 'Write `size`'],
    ['{show=place label="borders cuts"}', 'cuts', expect.stringContaining('`borders`')],
    ['{show=standing label="scores"}', 'scores', expect.stringContaining('`size`, `all` and `none`')],
    ['{show=flat label}', 'label', expect.stringContaining('`size`')],
    ['{show=flat label="all size"}', 'all', 'Write `label=all`, or take `all` out'],
    ['{show=flat label="s&#105;ze"}', undefined, undefined],
    ['{show=flat label="s&#105;zes"}', 's&#105;zes', 'Write `size`'],
  ])('%s', (attributes, at, cure) => {
    expect(read(`::figure[a]${attributes}`).told).toEqual(
      at === undefined ? [] : [['unknown-label', at, cure]],
    )
  })

  test('every word is known to some kind of figure, and all and none to each', () => {
    for (const word of labelWords)
      expect(figureKinds.some((kind) => labelsOfKind(kind).includes(word))).toBe(true)
    for (const kind of figureKinds)
      expect(labelsOfKind(kind)).toEqual(expect.arrayContaining(['all', 'none']))
  })
})

describe('the numbers that a step needs', () => {
  const card =
    '```card\nfold: bridge\nclosed: 7 x 5 in\nlayers:\n  backdrop: {on: floor, border: {sides: 1/16 in}, stock: paper}\n```\n\n'
  const needed = (step: string, show: FigureKind, of: string) => {
    const { said, cards } = fillLesson(readLesson(`${head}${card}1. ${step}`))
    const [target] = figureTargets(of, cards)
    return target && neededLabels(said.get(1), show, target)
  }

  test.each([
    ['Score the base at {base.mountains}.', ['size', 'names', 'mountains']],
    ['Turn it over and score it at {base.valleys}.', ['size', 'names', 'valleys']],
    [
      'Score at {base.mountains}, turn over and score at {base.valleys}.',
      ['size', 'names', 'mountains', 'valleys'],
    ],
    ['Cut the base to {base.size} and score it at {base.scores}.', ['size', 'names', 'scores', 'cuts']],
    ['Score it at {base.scores.2}.', ['size', 'names', 'scores']],
    ['Score it at {card.base.mountains}.', ['size', 'names', 'mountains']],
    ['Score it at {base.scores.1 + 1/4 in}.', ['size', 'names', 'scores']],
    ['Cut the base to {base.size}.', undefined],
    ['Score it as the figure says.', undefined],
    ['Stick the backdrop, {backdrop.size}, on.', undefined],
    ['Fold it.\n\n   :::variation\n   Or score it at {base.mountains}.\n   :::', undefined],
  ])('flat: %s', (step, labels) => {
    expect(needed(step, 'flat', 'base')).toEqual(labels)
  })

  test.each([
    ['Stick the backdrop {backdrop.border.left} from both sides.', ['names', 'borders', 'thickness']],
    ['Cut the backdrop to {backdrop.size} and stick it {backdrop.border.left} from both sides.', undefined],
    ['Stick the backdrop on the floor.', undefined],
  ])('place: %s', (step, labels) => {
    expect(needed(step, 'place', 'backdrop')).toEqual(labels)
  })
})
