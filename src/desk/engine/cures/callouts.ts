import { visit } from 'unist-util-visit'
import type { CalloutNode } from '../../../lesson/nodes.ts'
import type { Healer } from '../cures.ts'

/** The line that closes a call-out, below its first words: a longer one is closed where its teacher wants it. */
export const closeCallout: Healer = ({ from, was }, { lesson }) => {
  const { text } = lesson.source
  let found: CalloutNode | undefined
  visit(lesson.tree, 'callout', (node) => {
    if (node.position?.start.offset === from) found = node
  })
  const last = found?.children.at(-1)?.position?.end.offset
  const [colons] = /^:+/.exec(was) ?? []
  if (last === undefined || colons === undefined) return []
  const start = Math.max(text.lastIndexOf('\n', from - 1), text.lastIndexOf('\r', from - 1)) + 1
  const before = text.slice(start, from)
  const ending = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n'
  // In a list the line is set in as its text is; a quotation keeps its mark.
  const indent = before.replace(/[^\s>]/g, ' ')
  return [
    { words: 'Close it here', edits: [{ from: last, to: last, insert: `${ending}${indent}${colons}` }] },
  ]
}
