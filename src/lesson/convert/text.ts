import type { Link, Text } from 'mdast'
import { report } from '../../card/reading.ts'
import { written } from '../source.ts'
import { isDirectiveName, nearestDirective, reportShape, reportUnknown } from './shapes.ts'
import { type At, type Handler, isStray, type Walk } from './walk.ts'

/** Text may have braces that are not closed, and what was meant as `:minutes[5]`: they are told, and stay text. */
export const text: Handler<Text> = (node, walk, at) => {
  const { value } = node
  if (value.includes('{') || value.includes('}')) reportBraces(node, walk, at)
  if (value.includes('[')) reportBrackets(node, walk, at)
  return node
}

/** `<https://…>` is an address, whatever is in it. */
export const link: Handler<Link> = (node, walk, at, descend) => {
  if (walk.source.text[node.position?.start.offset ?? 0] !== '<') descend(node, { ...at, top: false })
  return node
}

function reportBraces(node: Text, walk: Walk, at: At): void {
  const start = node.position?.start.offset ?? 0
  for (const { index, 0: found } of written(walk.source, node.position).matchAll(/\\.|[{}]/gs)) {
    if (found.startsWith('\\') || isStray(at, start + index)) continue
    const place = walk.source.place(start + index, start + index + 1)
    if (found === '{')
      report(
        walk,
        'open-brace',
        place,
        'This brace is never closed',
        'Close it with `}`, or write `\\{` for a brace that is meant as text',
      )
    else
      report(
        walk,
        'stray-brace',
        place,
        'This brace closes nothing',
        'Take it out, or write `\\}` for a brace that is meant as text',
        'warning',
      )
  }
}

function reportBrackets(node: Text, walk: Walk, at: At): void {
  const start = node.position?.start.offset ?? 0
  const raw = written(walk.source, node.position)
  for (const { index, 1: colons = '', 2: name = '' } of raw.matchAll(
    /(?<![\\:])(:+)(\p{L}[\p{L}\p{N}_-]*)\[/gu,
  )) {
    if (isStray(at, start + index)) continue
    const place = walk.source.place(start + index, start + index + colons.length + name.length)
    if (isDirectiveName(name)) reportShape(walk, colons.length, name, place)
    else if (nearestDirective(name, colons.length) !== undefined)
      reportUnknown(walk, colons.length, name, place)
    else continue
    // Braces behind a figure would have been its attributes.
    if (colons.length < 2) continue
    const lineEnd = walk.source.text.slice(start + index).search(/[\r\n]|$/)
    at.stray.push([start + index, start + index + lineEnd])
  }
}
