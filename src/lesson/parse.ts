import type { Nodes, Root } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { lessonSyntax } from './syntax/syntax.ts'

const processor = unified().use(remarkParse).use(lessonSyntax).freeze()

/**
 * Parses the Markdown of a lesson.
 *
 * @param text of the file; it may start with a byte order mark, which counts in offsets but not in columns.
 * @returns a tree with directive and expression nodes, and with positions in that text.
 */
export function parseMarkdown(text: string): Root {
  const mark = hasMark(text)
  const tree = processor.parse(mark ? text.slice(1) : text)
  if (mark) moveOffsets(tree, 1)
  return tree
}

/** Whether a text starts with a byte order mark. */
export const hasMark = (text: string): boolean => text.charCodeAt(0) === 0xfeff

function moveOffsets(node: Nodes, by: number): void {
  // A point may be shared by several nodes; each node gets its own.
  if (node.position) {
    const { start, end } = node.position
    node.position = {
      start: { ...start, offset: (start.offset ?? 0) + by },
      end: { ...end, offset: (end.offset ?? 0) + by },
    }
  }
  if ('children' in node) for (const child of node.children) moveOffsets(child, by)
}
