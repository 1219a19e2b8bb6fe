import { expect, test } from 'vitest'
import { bodyView } from '../../src/publish/body.ts'
import type { Draw } from '../../src/publish/figure.ts'
import { drawStub, pier, plainLesson, stubFigure } from './lesson.ts'

const body = (markdown: string, draw: Draw = drawStub) => {
  const { tree, steps, wording } = plainLesson(markdown)
  return bodyView(tree, steps, [], wording, draw, new Map())
}

test('a lesson is cut at its headings', () => {
  const { tree, steps, wording } = pier()
  const { intro, before, stages } = bodyView(tree, steps, [], wording, drawStub, new Map())
  expect(intro?.html).toContain('<strong>lies flat</strong>')
  expect(before).toEqual([])
  expect(stages.map(({ name, level }) => [name, level])).toEqual([
    ['The base', 2],
    ['The picture', 2],
    ['Putting it together', 3],
  ])
  const numbers = stages.map(({ blocks }) =>
    blocks.flatMap(({ steps }) => steps?.map(({ number }) => number) ?? []),
  )
  expect(numbers).toEqual([
    [1, 2, 3],
    [4, 5, 6],
    [7, 8, 9],
  ])
  expect(stages[2]?.blocks.at(-1)?.prose?.html).toContain('callout-variation')
})

test('levels never skip one, however deep the lesson starts', () => {
  const { stages } = body('### First\n\n1. Fold.\n\n###### Second\n\n1. Cut.\n\n### Third\n\n1. Glue.')
  expect(stages.map(({ level }) => level)).toEqual([2, 3, 2])
})

test('steps without a heading above them come first', () => {
  const { intro, before, stages } = body('Hello.\n\n1. Fold.\n\n# Then\n\n1. Cut.')
  expect(intro?.html).toBe('<p>Hello.</p>')
  expect(before.map(({ steps }) => steps?.length)).toEqual([1])
  expect(stages).toHaveLength(1)
})

test('a figure stands beside its step, not in its text, and its time in the gutter', () => {
  const { stages } = body('# A\n\n1. Fold it. :minutes[75]\n\n   ::figure[The fold]{show=closed}')
  const [step] = stages[0]?.blocks[0]?.steps ?? []
  expect(step?.body.html).toBe('<p>Fold it.</p>')
  expect(step?.minutes).toBe('1\u00a0h\u00a015\u00a0min')
  expect(step?.across).toEqual([])
  expect(step?.figures.map(({ html }) => html)).toEqual([
    expect.stringContaining('<p class="caption" id="figure-1-caption">The fold</p>'),
  ])
})

test('a sequence, and what is too wide to stand beside the text, goes across the page', () => {
  const long: Draw = (_show, _of, { maxWidth }) => stubFigure(Math.max(maxWidth, 120), 20)
  for (const [show, draw] of [
    ['folding', drawStub],
    ['flat', long],
  ] as const) {
    const { stages } = body(`# A\n\n1. Fold.\n\n   ::figure[It]{show=${show}}`, draw)
    const [step] = stages[0]?.blocks[0]?.steps ?? []
    expect([step?.figures.length, step?.across.length]).toEqual([0, 1])
  }
})

test('a figure that cannot be drawn is told at its place, and leaves its caption', () => {
  const refuse: Draw = () => ({
    findings: [{ rule: 'no-figure', severity: 'warning', message: 'It does not stand' }],
  })
  const { stages, findings } = body('# A\n\n1. Fold.\n\n   ::figure[The fold]{show=standing}', refuse)
  expect(findings).toMatchObject([{ rule: 'no-figure', place: { line: 11, column: 4 } }])
  expect(stages[0]?.blocks[0]?.steps?.[0]?.body.html).toContain('<p>The fold</p>')
})

test('no two figures share an id, whatever they come with', () => {
  const { stages } = body('# A\n\n1. Fold.\n\n   ::figure[One]{show=closed}\n\n   ::figure[Two]{show=closed}')
  const html = stages[0]?.blocks[0]?.steps?.[0]?.figures.map((figure) => figure.html).join('') ?? ''
  const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id)
  expect(new Set(ids).size).toBe(ids.length)
  for (const [, id] of html.matchAll(/url\(#([^)]*)\)/g)) expect(ids).toContain(id)
  for (const [, id] of html.matchAll(/aria-labelledby="([^"]*)"/g)) expect(ids).toContain(id)
})
