import { gfmTableToMarkdown } from 'mdast-util-gfm-table'
import { toMarkdown } from 'mdast-util-to-markdown'
import type { MeasureNode } from '../lesson/nodes.ts'
import type { Listing } from './listing.ts'
import { listingTree } from './listing-tree.ts'

/** A list as a Markdown file, its tables lined up. Ends with a newline. */
export const listingMarkdown = (listing: Listing): string =>
  toMarkdown(listingTree(listing), {
    extensions: [gfmTableToMarkdown()],
    handlers: { measure: (node: MeasureNode) => node.text ?? '' },
  })
