import type { ListItem, Nodes, Root } from 'mdast'
import type { FigureNode } from '../nodes.ts'
import { lengthOfText } from './after-text.ts'
import type { Offered } from './offered.ts'

/** A tree with figures put into their steps. The one given, and all steps without a figure, stay as they are. */
export function withFigures(tree: Root, offered: readonly Offered[]): Root {
  const figures = new Map(offered.map((one) => [one.item, nodeOf(one)]))
  const put = (item: ListItem): ListItem => {
    const figure = figures.get(item)
    const at = lengthOfText(item)
    return figure
      ? { ...item, children: [...item.children.slice(0, at), figure, ...item.children.slice(at)] }
      : item
  }
  const children = tree.children.map(
    (node): Nodes => (node.type === 'list' ? { ...node, children: node.children.map(put) } : node),
  )
  return { ...tree, children: children as Root['children'] }
}

/** What is found about it is told at its step. */
const nodeOf = ({ show, of, caption, item: { position } }: Offered): FigureNode => ({
  type: 'figure',
  show,
  ...(of !== undefined && { of }),
  children: [{ type: 'text', value: caption }],
  ...(position && { position }),
})
