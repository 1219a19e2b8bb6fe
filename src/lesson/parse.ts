import type { Nodes, Root } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import type { Position } from 'unist'
import { isTooNested } from './syntax/nesting.ts'
import { lessonSyntax } from './syntax/syntax.ts'

const processor = unified().use(remarkParse).use(lessonSyntax).freeze()
const withoutCallouts = unified().use(remarkParse).use(lessonSyntax, { callouts: false }).freeze()

/**
 * Parses the Markdown of a lesson.
 *
 * @param text of the file; it may start with a byte order mark, which counts in offsets but not in columns.
 * @returns a tree with directive and expression nodes, and with positions in that text.
 */
export function parseMarkdown(text: string): Root {
  const tree = (isTooNested(text) ? withoutCallouts : processor).parse(text)
  // The parser skips the mark without counting it.
  if (hasMark(text)) moveOffsets(tree, 1)
  return tree
}

/** Whether a text starts with a byte order mark. */
export const hasMark = (text: string): boolean => text.charCodeAt(0) === 0xfeff

function moveOffsets(tree: Root, by: number): void {
  const nodes: Nodes[] = [tree]
  for (let node = nodes.pop(); node; node = nodes.pop()) {
    if (node.position) node.position = moved(node.position, by)
    // Directives keep the places of their parts as data.
    const parts = node.data && 'position' in node.data ? (node.data.position as Record<string, unknown>) : {}
    movePositions(parts, by)
    if ('children' in node) nodes.push(...node.children)
  }
}

/** Positions by name; one of the names may hold further positions by name. */
function movePositions(parts: Record<string, unknown>, by: number): void {
  for (const [name, part] of Object.entries(parts)) {
    if (name === 'attributes') movePositions(part as Record<string, unknown>, by)
    else parts[name] = moved(part as Position, by)
  }
}

/** A point may be shared by several positions: each gets its own. */
const moved = ({ start, end }: Position, by: number): Position => ({
  start: { ...start, offset: (start.offset ?? 0) + by },
  end: { ...end, offset: (end.offset ?? 0) + by },
})
