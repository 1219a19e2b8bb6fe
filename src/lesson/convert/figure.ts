import type { LeafDirective } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import { type Place, suggestWord } from '../../length/finding.ts'
import { type FigureKind, figureKinds } from '../nodes.ts'
import { placeOf } from '../source.ts'
import { attributePlace, checkAttributes, valuePlace } from './attributes.ts'
import { readLabels } from './figure-labels.ts'
import type { Handler, Walk } from './walk.ts'

const isKind = (word: string): word is FigureKind => (figureKinds as readonly string[]).includes(word)

/** Figures that a lesson is printed with. Each takes its time; a long lesson has a tenth of it. */
const mostFigures = 400

/** `::figure[caption]{show=flat of=base}`. One that cannot be drawn leaves its caption. */
export const figure: Handler<LeafDirective> = (node, walk, at, descend) => {
  descend(node, { ...at, top: false })
  checkAttributes(node, ['show', 'of', 'label'], walk)
  const { show, of } = node.attributes ?? {}
  const position = node.position && { position: node.position }
  if (of === '')
    report(
      walk,
      'unknown-piece',
      attributePlace(node, 'of'),
      'This does not say which piece to draw',
      'Write the name of a piece, such as `of=base`, or leave `of` out to draw the whole card',
    )
  if (!show)
    report(
      walk,
      'missing-attribute',
      placeOf(node.position),
      'This figure does not say what to show',
      `Add one of ${figureKinds.map((kind) => `\`show=${kind}\``).join(', ')} in braces`,
    )
  else if (!isKind(show))
    report(
      walk,
      'unknown-figure',
      valuePlace(node, 'show', walk),
      `Unexpected figure \`${show}\``,
      suggestWord(show, figureKinds),
    )
  else if (!tooMany(walk, placeOf(node.position))) {
    const labels = readLabels(node, show, walk)
    return {
      type: 'figure',
      show,
      ...(labels && { labels }),
      ...(of && { of, data: { ofPlace: valuePlace(node, 'of', walk) } }),
      children: node.children,
      ...position,
    }
  }
  return node.children.length > 0 ? { type: 'paragraph', children: node.children, ...position } : []
}

/** Counts one more figure, and tells the first that is too much. */
function tooMany(walk: Walk, place: Place): boolean {
  walk.figures++
  if (walk.figures === mostFigures + 1)
    report(
      walk,
      'too-much',
      place,
      `The lesson has more than ${mostFigures} figures: this one and those behind it are not drawn`,
      'Make several lessons of it, or take figures out',
    )
  return walk.figures > mostFigures
}
