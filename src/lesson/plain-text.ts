import type { Nodes } from 'mdast'

/** What a reader would hear: the text below a node, measures filled in, without minutes. */
export function plainText(node: Nodes): string {
  switch (node.type) {
    case 'measure':
      return node.text ?? `{${node.value}}`
    case 'text':
    case 'inlineCode':
    case 'code':
      return node.value
    case 'image':
    case 'imageReference':
      return node.alt ?? ''
    case 'break':
      return ' '
    case 'root':
    case 'blockquote':
    case 'callout':
    case 'list':
    case 'listItem':
    case 'table':
    case 'tableRow':
      return node.children.map(plainText).join(' ')
    default:
      return 'children' in node ? node.children.map(plainText).join('') : ''
  }
}
