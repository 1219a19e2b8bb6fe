import type { ListItem, Nodes, PhrasingContent, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import { plainText } from './plain-text.ts'

/** A name is no longer than this where it can be cut between two clauses. */
const longest = 60

/**
 * A short name for each step, by its number: the first clause of what it says, without the numbers that it asks for.
 * `Cut the base to 8 1/2 × 5 in. Lay it …` is `Cut the base`.
 */
export function stepNames(tree: Root): Map<number, string> {
  const names = new Map<number, string>()
  visit(tree, 'listItem', ({ data, children }) => {
    if (data?.step !== undefined) names.set(data.step, nameOf(children) || `Step ${data.step}`)
  })
  return names
}

function nameOf(blocks: ListItem['children']): string {
  const first = blocks.find((block) => block.type === 'paragraph')
  return first ? clauseOf(beforeNumbers(first.children)) : ''
}

/** The text up to the first measure. How many of something there are belongs to its name. */
function beforeNumbers(nodes: readonly PhrasingContent[]): string {
  let text = ''
  for (const node of nodes) {
    if (hasLength(node))
      return text.replace(/[\s,;:(]*(?:\b(?:to|at|of|with|from|by|in|is|are|be)\s*)?$/i, '')
    text += plainText(node)
  }
  return text
}

const hasLength = (node: Nodes): boolean =>
  node.type === 'measure'
    ? !/^\d+$/.test(node.text ?? '')
    : 'children' in node && node.children.some(hasLength)

/** The first clause of a text, on one line, without what ends it. */
function clauseOf(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim()
  const [clause = ''] = /^.*?(?=[.!?:;,](?:\s|$)|$)/.exec(line) ?? []
  if (clause.length <= longest) return clause
  const cut = clause.search(/ (?:and|so that|until|where|with|then) /)
  return cut > 0 ? clause.slice(0, cut) : clause
}
