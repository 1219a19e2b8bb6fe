import type { Paragraph } from 'mdast'
import { report } from '../../card/reading.ts'
import { written } from '../source.ts'
import { isDirectiveName, nearestDirective, reportShape, reportUnknown } from './shapes.ts'
import type { Handler, Walk } from './walk.ts'

/** A line of a paragraph that starts with two or more colons. */
const colonLine = /^(?:[ \t]*>)*[ \t]*(:{2,})(\p{L}[\p{L}\p{N}_-]*)?([^\r\n]*)/gmu
/** What may stand behind the name of a directive. */
const behindName = /^(\[.*\])?(\{.*\})?[ \t]*$/u

/** A paragraph may have lines that were meant as directives: they are told, and stay text. */
export const paragraph: Handler<Paragraph> = (node, walk, at, descend) => {
  const raw = written(walk.source, node.position)
  const stray = raw.includes('::') ? strayLines(raw, node.position?.start.offset ?? 0, walk) : []
  descend(node, { ...at, top: false, stray })
  return node
}

function strayLines(raw: string, start: number, walk: Walk): [number, number][] {
  return [...raw.matchAll(colonLine)].flatMap(({ index, 0: line, 1: colons = '', 2: name, 3: rest = '' }) => {
    const end = start + index + line.length
    const from = end - rest.length - (name ?? '').length - colons.length
    const place = walk.source.place(from, end - rest.length)
    if (name === undefined) {
      if (rest.trim() !== '' || colons.length < 3) return []
      if (walk.toldOpen > 0) walk.toldOpen--
      else
        report(
          walk,
          'stray-colons',
          place,
          'These colons close nothing',
          'Take them out; a call-out that holds another one takes one colon more, such as `::::tip`',
          'warning',
        )
      return []
    }
    if (isDirectiveName(name)) reportShape(walk, colons.length, name, place)
    else if (behindName.test(rest) || nearestDirective(name, colons.length) !== undefined)
      reportUnknown(walk, colons.length, name, place)
    else return []
    if (colons.length >= 3) walk.toldOpen++
    return [[from, end]]
  })
}
