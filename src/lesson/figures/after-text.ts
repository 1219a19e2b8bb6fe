import type { BlockContent, DefinitionContent, ListItem } from 'mdast'

type Block = BlockContent | DefinitionContent

/** Of what a step says before its first call-out or figure. */
const words: ReadonlySet<Block['type']> = new Set(['paragraph', 'list', 'blockquote', 'table'])

/** How many of a step's blocks are its text: a figure stands behind them, and before its tips. */
export function lengthOfText({ children }: ListItem): number {
  const other = children.findIndex(({ type }) => !words.has(type))
  return other < 0 ? children.length : Math.max(1, other)
}
