import type { ListItem } from 'mdast'
import { type Edit, lineEnding } from '../edits.ts'
import { lengthOfText } from './after-text.ts'

/**
 * The change of a lesson's text that puts a line below the text of a step: with a blank line above it, and one below
 * where something follows at once. It begins as the lines of the step do, quotation marks and tabs included.
 *
 * @returns undefined when the step stands in the file in a way that says nothing of its lines.
 */
export function lineBelow(text: string, item: ListItem, line: string): Edit | undefined {
  const first = item.children[0]?.position?.start.offset
  const last = item.children[lengthOfText(item) - 1]?.position?.end.offset
  if (first === undefined || last === undefined) return undefined
  const lineStart = Math.max(text.lastIndexOf('\n', first - 1), text.lastIndexOf('\r', first - 1)) + 1
  // Where the marker of the item stands, the lines below it have spaces.
  const begin = text.slice(lineStart, first).replace(/[^\t>]/g, ' ')
  const rest = /^[^\r\n]*/.exec(text.slice(last))?.[0] ?? ''
  if (rest.trim() !== '') return undefined
  const at = last + rest.length
  const ending = /^(?:\r\n|\r|\n)/.exec(text.slice(at))?.[0]
  const next = ending === undefined ? '' : (/^[^\r\n]*/.exec(text.slice(at + ending.length))?.[0] ?? '')
  const blank = begin.trimEnd()
  const eol = ending ?? lineEnding(text)
  const isTight = next.replace(/[\s>]/g, '') !== ''
  return {
    start: at,
    end: at,
    text: `${eol}${blank}${eol}${begin}${line}${isTight ? eol + blank : ''}`,
  }
}
