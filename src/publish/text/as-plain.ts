import type { List, ListItem, Nodes, Root, Table } from 'mdast'

/**
 * A tree as plain text, for a place that sets nothing: an empty line between blocks, a dash or a number before the items
 * of a list, links with their address behind them. Lines are as long as they are. Ends with a newline.
 */
export const asPlain = (tree: Root): string => `${blocksText(tree.children)}\n`

const blocksText = (nodes: readonly Nodes[]): string =>
  nodes
    .map(blockText)
    .filter((text) => text !== '')
    .join('\n\n')

function blockText(node: Nodes): string {
  switch (node.type) {
    case 'paragraph':
    case 'heading':
      return inline(node)
    case 'list':
      return listText(node)
    case 'blockquote':
      return blocksText(node.children)
    case 'table':
      return tableText(node)
    case 'code':
      return node.value
    default:
      return ''
  }
}

/** Items one below the other; steps, which are longer, with room between them. */
function listText({ ordered, start, children }: List): string {
  const items = children.map((item, i) => itemText(item, ordered ? `${(start ?? 1) + i}. ` : '- '))
  return items.join(ordered ? '\n\n' : '\n')
}

function itemText({ children }: ListItem, mark: string): string {
  const text = children
    .map(blockText)
    .filter((block) => block !== '')
    .join('\n')
  return mark + text.replaceAll('\n', `\n${' '.repeat(mark.length)}`)
}

/** A row a line, its cells apart by what no measure holds. */
const tableText = ({ children }: Table): string =>
  children.map((row) => row.children.map(inline).join(' | ')).join('\n')

function inline(node: Nodes): string {
  if (node.type === 'break') return '\n'
  if (node.type === 'text' || node.type === 'inlineCode') return node.value
  if (!('children' in node)) return ''
  const words = node.children.map(inline).join('')
  return node.type === 'link' && !sameAddress(words, node.url) ? `${words} (${node.url})` : words
}

const sameAddress = (words: string, url: string): boolean => words === url.replace(/^mailto:/i, '')
