import type { Nodes } from 'mdast'
import { report } from '../../card/reading.ts'
import { placeOf, written } from '../source.ts'
import { block } from './block.ts'
import { callout } from './callout.ts'
import { drying } from './drying.ts'
import { figure } from './figure.ts'
import { image } from './image.ts'
import { heading, list } from './list.ts'
import { meant } from './meant.ts'
import { measure } from './measure.ts'
import { minutes } from './minutes.ts'
import { paragraph } from './paragraph.ts'
import { scan } from './scan.ts'
import { link, text } from './text.ts'
import type { At, Descend, Handler, Walk } from './walk.ts'

/** One handler for each type of node that is, or may hold, something of ours. */
const handlers = {
  code: block,
  containerDirective: callout,
  leafDirective: (node, ...rest) => (node.name === 'scan' ? scan : figure)(node, ...rest),
  textDirective: (node, ...rest) =>
    (node.name === 'meant' ? meant : node.name === 'drying' ? drying : minutes)(node, ...rest),
  mdxTextExpression: measure,
  paragraph,
  heading,
  list,
  text,
  link,
  image,
  blockquote: (node, _walk, at, descend) => {
    descend(node, { ...at, top: false, quoted: true })
    return node
  },
} satisfies { [T in Nodes['type']]?: Handler<Extract<Nodes, { type: T }>> } as unknown as Partial<
  Record<string, Handler>
>

/** A tree deeper than this is cut off, so that whatever follows need not mind. */
const deepest = 100

/** Turns directives, braces and blocks below `parent` into a lesson's own nodes, in place, in one walk. */
export function convertChildren(parent: Nodes, walk: Walk, at: At): void {
  let depth = 0
  const descend: Descend = (node, where) => {
    if (!('children' in node)) return
    if (depth >= deepest) return cutOff(node, walk)
    depth++
    const children: Nodes[] = node.children
    let changed: Nodes[] | undefined
    for (const [i, child] of children.entries()) {
      const handler = handlers[child.type]
      const result = handler ? handler(child, walk, where, descend) : inside(child, where, descend)
      if (result !== child) changed ??= children.slice(0, i)
      if (changed) changed.push(...(Array.isArray(result) ? result : [result]))
    }
    if (changed) (node as { children: Nodes[] }).children = changed
    depth--
  }
  descend(parent, at)
}

const inside = (node: Nodes, at: At, descend: Descend): Nodes => {
  descend(node, at.top ? { ...at, top: false } : at)
  return node
}

/** What is nested too deeply stays as text. */
function cutOff(node: Extract<Nodes, { children: unknown }>, walk: Walk): void {
  const text: Nodes = { type: 'text', value: written(walk.source, node.position) }
  const inText = [
    'emphasis',
    'strong',
    'link',
    'linkReference',
    'paragraph',
    'heading',
    'figure',
    'scan',
    'tableCell',
  ]
  if (inText.includes(node.type)) node.children = [text]
  else if (node.type === 'blockquote' || node.type === 'listItem' || node.type === 'callout')
    node.children = [{ type: 'paragraph', children: [text] }]
  else node.children = []
  report(walk, 'too-deep', placeOf(node.position), 'This is nested too deeply', 'Take a level out')
}
