import type { Directives } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import { type Place, suggestWord } from '../../length/finding.ts'
import { placeOf, written } from '../source.ts'
import type { Walk } from './walk.ts'

/** A finding for every attribute of a directive that is not one of `known`. */
export function checkAttributes(node: Directives, known: readonly string[], walk: Walk): void {
  for (const name of Object.keys(node.attributes ?? {}))
    if (!known.includes(name))
      report(
        walk,
        'unknown-attribute',
        attributePlace(node, name),
        `Unexpected \`${name}\` in \`${node.name}\``,
        `${suggestWord(name, known)}; put a value of several words in quotation marks`.replace(
          known.length === 0 ? /;.*/ : /^$/,
          '',
        ),
      )
}

/** Where an attribute stands: ` show=flat `. */
export const attributePlace = (node: Directives, name: string): Place =>
  placeOf(node.data?.position?.attributes?.[name] ?? node.position)

/** Where the value of an attribute stands, without its quotation marks: the `flat` of `show="flat"`. */
export function valuePlace(node: Directives, name: string, walk: Walk): Place {
  const position = node.data?.position?.attributes?.[name]
  const raw = written(walk.source, position)
  const [before, mark] = /^[^=]*=\s*(["']?)/.exec(raw) ?? []
  if (!position || before === undefined) return attributePlace(node, name)
  const start = position.start.offset ?? 0
  return walk.source.place(start + before.length, start + raw.length - (mark ?? '').length)
}
