import type { Root } from 'mdast'
import { gfmTableToMarkdown } from 'mdast-util-gfm-table'
import { toMarkdown } from 'mdast-util-to-markdown'

/** A tree as a Markdown file. A line that ends early does so by spaces: who pastes it sees no sign. */
export const asMarkdown = (tree: Root): string =>
  toMarkdown(tree, {
    bullet: '-',
    rule: '-',
    extensions: [gfmTableToMarkdown({ tablePipeAlign: false })],
    handlers: { break: () => '  \n' },
  })
