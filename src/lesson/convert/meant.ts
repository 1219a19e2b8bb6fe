import type { Nodes, PhrasingContent } from 'mdast'
import type { TextDirective } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import { placeOf } from '../source.ts'
import { checkAttributes } from './attributes.ts'
import type { Handler } from './walk.ts'

/**
 * `:meant[2 mm]` is words that are meant as they are: they stay in its place, marked, and no rule about loose numbers
 * looks at them. What else may stand in running text may stand in it too.
 */
export const meant: Handler<TextDirective> = (node, walk, at, descend) => {
  checkAttributes(node, [], walk)
  if (node.children.length === 0)
    report(
      walk,
      'empty-meant',
      placeOf(node.position),
      'There are no words in these brackets',
      'Write what is meant, such as `:meant[2 mm]`, or take it out',
      'warning',
    )
  descend(node, { ...at, top: false })
  for (const child of node.children) mark(child)
  return node.children as PhrasingContent[]
}

function mark(node: Nodes): void {
  if (node.type === 'text') node.data = { ...node.data, meant: true }
  else if ('children' in node) node.children.forEach(mark)
}
