import type { LeafDirective } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import { suggestWord } from '../../length/finding.ts'
import { type FigureKind, figureKinds } from '../nodes.ts'
import { placeOf } from '../source.ts'
import { attributePlace, checkAttributes, valuePlace } from './attributes.ts'
import { readLabels } from './figure-labels.ts'
import type { Handler } from './walk.ts'

const isKind = (word: string): word is FigureKind => (figureKinds as readonly string[]).includes(word)

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
  if (show && isKind(show)) {
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
  if (show)
    report(
      walk,
      'unknown-figure',
      valuePlace(node, 'show', walk),
      `Unexpected figure \`${show}\``,
      suggestWord(show, figureKinds),
    )
  else
    report(
      walk,
      'missing-attribute',
      placeOf(node.position),
      'This figure does not say what to show',
      `Add one of ${figureKinds.map((kind) => `\`show=${kind}\``).join(', ')} in braces`,
    )
  return node.children.length > 0 ? { type: 'paragraph', children: node.children, ...position } : []
}
