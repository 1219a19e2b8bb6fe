import type { BlockContent, Nodes, PhrasingContent, Root } from 'mdast'
import type { FigureNode, ScanNode } from './nodes.ts'

/** Gives what stands in the place of a figure; undefined for its caption. */
export type DrawFigure = (figure: FigureNode) => BlockContent | undefined

/**
 * A lesson's tree with nodes of its own replaced by those of mdast, in place: a measure is text, minutes are `(5 min)`
 * and `(dries 20 min)`,
 * a call-out is a block quote that becomes `<div class="callout callout-tip">`, a figure is its caption or what `draw`
 * makes of it, a code to scan is its link, and each list of steps starts with the number of its first step.
 */
export function toOrdinary(tree: Root, draw: DrawFigure = () => undefined): Root {
  replaceIn(tree, draw)
  return tree
}

function replaceIn(node: Nodes, draw: DrawFigure): void {
  if (!('children' in node)) return
  if (node.type === 'list') {
    const step = node.children[0]?.data?.step
    if (step !== undefined) node.start = step
  }
  const children = (node.children as Nodes[]).flatMap((child): Nodes[] => {
    replaceIn(child, draw)
    const position = child.position && { position: child.position }
    switch (child.type) {
      case 'measure':
        return [{ type: 'text', value: child.text ?? `{${child.value}}`, ...position }]
      case 'minutes':
        return [{ type: 'text', value: `(${child.minutes} min)`, ...position }]
      case 'drying':
        return [{ type: 'text', value: `(dries ${child.minutes} min)`, ...position }]
      case 'callout':
        return [
          {
            type: 'blockquote',
            children: child.children,
            data: { hName: 'div', hProperties: { className: ['callout', `callout-${child.kind}`] } },
            ...position,
          },
        ]
      case 'figure': {
        const drawn = draw(child)
        if (drawn) return [drawn]
        return child.children.length > 0 ? [{ type: 'paragraph', children: child.children, ...position }] : []
      }
      case 'scan':
        return [{ type: 'paragraph', children: [...child.children, ...linkBehind(child)], ...position }]
      default:
        return [child]
    }
  })
  ;(node as { children: Nodes[] }).children = children
}

/** The link of a code to scan, behind its caption. */
const linkBehind = ({ children, link }: ScanNode): PhrasingContent[] => [
  ...(children.length > 0 ? [{ type: 'text' as const, value: ': ' }] : []),
  { type: 'link', url: link, children: [{ type: 'text', value: link }] },
]
