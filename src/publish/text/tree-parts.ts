import type { Heading, List } from 'mdast'
import { text } from './phrases.ts'

export const heading = (depth: Heading['depth'], words: string): Heading => ({
  type: 'heading',
  depth,
  children: [text(words)],
})

/** A list of one line each. */
export const bullets = (lines: readonly string[]): List => ({
  type: 'list',
  ordered: false,
  spread: false,
  children: lines.map((line) => ({
    type: 'listItem',
    spread: false,
    children: [{ type: 'paragraph', children: [text(line)] }],
  })),
})
