import type { MdxTextExpression } from 'mdast-util-mdx-expression'
import { report } from '../../card/reading.ts'
import type { Place } from '../../length/finding.ts'
import { placeOf, type Source, written } from '../source.ts'
import { type Handler, isStray } from './walk.ts'

/** `{base.size}` becomes a measure; empty braces, and braces in a line that is no directive, stay text. */
export const measure: Handler<MdxTextExpression> = (node, walk, at) => {
  const raw = written(walk.source, node.position)
  const asText = { type: 'text' as const, value: raw, ...(node.position && { position: node.position }) }
  if (isStray(at, node.position?.start.offset ?? 0)) return asText
  if (node.value.trim() === '') {
    report(
      walk,
      'empty-brace',
      placeOf(node.position),
      'There is no measure in these braces',
      'Write a name such as `{base.width}`, or `\\{` for a brace that is meant as text',
    )
    return asText
  }
  const lines = /[\r\n]/.test(raw) ? lineStarts(node, raw, walk.source) : undefined
  return {
    type: 'measure',
    value: node.value,
    ...(node.position && { position: node.position }),
    ...(lines && { data: { lines } }),
  }
}

/**
 * Where each line of a measure over several lines starts: behind the indent or the `>` of its container.
 *
 *     > {base.width
 *     > + 1/4 in}      the second line starts at the `+`
 */
function lineStarts(node: MdxTextExpression, raw: string, source: Source): Place[] {
  const values = node.value.split(/\r\n?|\n/)
  let end = (node.position?.start.offset ?? 0) + 1
  return raw
    .slice(1, -1)
    .split(/(\r\n?|\n)/)
    .flatMap((line, i) => {
      end += line.length
      if (i % 2 === 1) return []
      // A tab may have become several spaces.
      return [source.place(end - Math.min(line.length, (values[i / 2] ?? '').length), end)]
    })
}
