import type { BlockContent, Nodes, Paragraph } from 'mdast'
import { figureTargets } from '../lesson/figure-target.ts'
import { neededLabels } from '../lesson/figures/needed-labels.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import type { FigureNode } from '../lesson/nodes.ts'
import { learnAll } from '../wording/languages.ts'
import { drawFigure } from './draw.ts'

export { type Drawn, drawFigure, type FigureFinding, type FigureOptions } from './draw.ts'
export type { Figure } from './figure.ts'

// A lesson of any language may come at any time, and functions that answer at once cannot wait for its words.
learnAll()

/**
 * Draws a figure of a lesson for a tree of mdast: the `figure` option of the remark plugin. With `remark-rehype` it
 * becomes a `figure` element with the drawing, which has a text alternative of its own, and the caption below it. In a
 * step the drawing has the numbers that the step needs, unless `label=` says otherwise.
 *
 * @returns undefined when it cannot be drawn from one card, as a cutting plan; then its caption stays.
 */
export function figure(node: FigureNode, lesson: FilledLesson): BlockContent | undefined {
  const [target] = figureTargets(node.of, lesson.cards)
  if (!target) return undefined
  const step = stepWith(node, lesson.tree)
  const labels =
    node.labels ?? (step === undefined ? undefined : neededLabels(lesson.said.get(step), node.show, target))
  const drawn = drawFigure(node.show, target.card, target.of, lesson.wording, {
    ...(labels && { labels }),
    key: `figure-${node.position?.start.offset ?? 0}`,
  })
  if ('findings' in drawn) return undefined
  const drawing: Paragraph = {
    type: 'paragraph',
    children: [],
    data: { hName: 'div', hChildren: [drawn.svg] },
  }
  const caption: Paragraph = { type: 'paragraph', children: node.children, data: { hName: 'figcaption' } }
  return {
    type: 'blockquote',
    data: { hName: 'figure', hProperties: { className: ['figure', `figure-${node.show}`] } },
    children: node.children.length > 0 ? [drawing, caption] : [drawing],
    ...(node.position && { position: node.position }),
  }
}

/** The number of the step that a figure stands in. The node may be a copy of the tree's own: its place tells it. */
function stepWith({ position }: FigureNode, tree: Nodes): number | undefined {
  const at = position?.start.offset
  if (at === undefined) return undefined
  let step: number | undefined
  const walk = (node: Nodes): void => {
    const { start, end } = node.position ?? {}
    if (start?.offset !== undefined && end?.offset !== undefined && (at < start.offset || at >= end.offset))
      return
    if (node.type === 'listItem') step = node.data?.step ?? step
    if ('children' in node) for (const child of node.children) walk(child)
  }
  walk(tree)
  return step
}
