import type { Image } from 'mdast'
import { report } from '../../card/reading.ts'
import { placeOf, written } from '../source.ts'
import type { Handler } from './walk.ts'

/** The text of a picture is no place for a measure: it is read out, and never filled in. */
export const image: Handler<Image> = (node, walk) => {
  const raw = written(walk.source, node.position)
  const brace = raw.slice(0, raw.lastIndexOf('](')).search(/(?<!\\)\{/)
  if (brace >= 0)
    report(
      walk,
      'measure-place',
      placeOf(node.position),
      'A measure cannot stand in the text of a picture',
      'Move it out into the text, or write `\\{` for a brace that is meant as text',
      'warning',
    )
  return node
}
