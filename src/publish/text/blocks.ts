import type { BlockContent, Definition, Nodes, Paragraph, PhrasingContent } from 'mdast'
import type { CalloutNode } from '../../lesson/nodes.ts'
import type { Wording } from '../../wording/wording.ts'
import { calloutWord } from '../callout.ts'
import type { Part } from './parts.ts'
import { phrases, text } from './phrases.ts'
import { sayWith } from './with-nodes.ts'

/** What the blocks of a lesson are turned into plain Markdown with. */
export interface Blocks {
  readonly without: ReadonlySet<Part>
  readonly definitions: readonly Definition[]
  readonly wording: Wording
}

const partOf = { tip: 'tips', variation: 'variations', ahead: 'ahead' } as const

/** Blocks of a lesson as blocks that any Markdown program knows: no figures, and call-outs as paragraphs. */
export const plainBlocks = (nodes: readonly Nodes[], blocks: Blocks): BlockContent[] =>
  nodes.flatMap((node) => plainBlock(node, blocks))

function plainBlock(node: Nodes, blocks: Blocks): BlockContent[] {
  const words = (children: readonly PhrasingContent[]): PhrasingContent[] =>
    phrases(children, blocks.definitions)
  switch (node.type) {
    case 'paragraph':
      return paragraph(words(node.children))
    case 'heading':
      return paragraph([{ type: 'strong', children: words(node.children) }])
    case 'callout':
      return calloutBlocks(node, blocks)
    case 'figure':
      return blocks.without.has('captions') || node.children.length === 0
        ? []
        : paragraph(sayWith(blocks.wording, 'text.figure', 'caption', words(node.children)))
    case 'scan':
      return paragraph([
        ...(node.children.length > 0
          ? [...sayWith(blocks.wording, 'handout.label', 'words', words(node.children)), text(' ')]
          : []),
        { type: 'link', url: node.link, children: [text(node.link)] },
      ])
    case 'blockquote':
      return [{ type: 'blockquote', children: plainBlocks(node.children, blocks) }]
    case 'list': {
      const children = node.children.map((item) => ({
        ...bare(item),
        children: plainBlocks(item.children, blocks),
      }))
      return [{ ...bare(node), spread: false, children }]
    }
    case 'table': {
      const children = node.children.map((row) => ({
        ...bare(row),
        children: row.children.map((cell) => ({ ...bare(cell), children: words(cell.children) })),
      }))
      return [{ ...bare(node), children }]
    }
    case 'code':
    case 'thematicBreak':
      return [bare(node)]
    default:
      return []
  }
}

/** Where it stood in the file is of no use here. */
function bare<N extends Nodes>({ position: _, ...node }: N): N {
  return node as N
}

/** A paragraph, without spaces at its ends; none when nothing is left of it. */
export function paragraph(children: readonly PhrasingContent[]): Paragraph[] {
  const [first, last] = [children[0], children.at(-1)]
  const trimmed = children.map((node): PhrasingContent => {
    if (node.type !== 'text') return node
    const start = node === first ? node.value.trimStart() : node.value
    return { ...node, value: node === last ? start.trimEnd() : start }
  })
  const kept = trimmed.filter((node) => node.type !== 'text' || node.value !== '')
  return kept.length === 0 ? [] : [{ type: 'paragraph', children: kept }]
}

/** `Tip: Leave a hair on both sides.` Its word stands before its first paragraph. */
export function calloutBlocks({ kind, children }: CalloutNode, blocks: Blocks): BlockContent[] {
  if (kind !== 'caution' && blocks.without.has(partOf[kind])) return []
  const [head, ...rest] = children
  const titled = head?.type === 'paragraph' && head.data !== undefined && 'directiveLabel' in head.data
  const title = titled ? [text(', '), ...phrases(head.children, blocks.definitions)] : []
  const named = [text(calloutWord(kind, blocks.wording)), ...title]
  const word: PhrasingContent = {
    type: 'strong',
    children: sayWith(blocks.wording, 'handout.label', 'words', named),
  }
  const [first, ...more] = plainBlocks(titled ? rest : children, blocks)
  if (first?.type !== 'paragraph')
    return [{ type: 'paragraph', children: [word] }, ...(first ? [first] : []), ...more]
  return [{ type: 'paragraph', children: [word, text(' '), ...first.children] }, ...more]
}
