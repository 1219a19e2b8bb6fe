import type { Nodes, Root } from 'mdast'
import type { FigureNode, MeasureNode } from './nodes.ts'

/** What is done with the nodes of a tree while it is filled in. */
export interface Visitors {
  measure(node: MeasureNode): MeasureNode
  figure(node: FigureNode): void
}

/** A tree with its measures replaced. Nodes without a measure below them are shared with the old tree. */
export function fillTree(tree: Root, visitors: Visitors): Root {
  const fill = (node: Nodes): Nodes => {
    if (node.type === 'measure') return visitors.measure(node)
    if (!('children' in node)) return node
    if (node.type === 'figure') visitors.figure(node)
    let changed = false
    const children = node.children.map((child) => {
      const filled = fill(child)
      changed ||= filled !== child
      return filled
    })
    return changed ? ({ ...node, children } as Nodes) : node
  }
  return fill(tree) as Root
}
