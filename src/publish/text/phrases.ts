import type { Definition, PhrasingContent, Text } from 'mdast'
import { isLink } from '../../lesson/link.ts'

export const text = (value: string): Text => ({ type: 'text', value })

/** A number that a reader looks for. */
export const strong = (value: string): PhrasingContent => ({ type: 'strong', children: [text(value)] })

/** Words of a lesson as any Markdown program knows them: measures filled in, without minutes, pictures as their words. */
export const phrases = (
  nodes: readonly PhrasingContent[],
  definitions: readonly Definition[],
): PhrasingContent[] => joined(nodes.flatMap((node) => phrase(node, definitions)))

function phrase(node: PhrasingContent, definitions: readonly Definition[]): PhrasingContent[] {
  const inside = (children: readonly PhrasingContent[]): PhrasingContent[] => phrases(children, definitions)
  switch (node.type) {
    case 'measure':
      return [strong(node.text ?? `{${node.value}}`)]
    case 'text':
      return [text(node.value.replace(/\s+/g, ' '))]
    case 'inlineCode':
      return [{ type: 'inlineCode', value: node.value }]
    case 'break':
      return [text(' ')]
    case 'image':
    case 'imageReference':
      return node.alt ? [text(node.alt)] : []
    case 'link':
      return link(node.url, inside(node.children))
    case 'linkReference': {
      const found = definitions.find(({ identifier }) => identifier === node.identifier)
      return found ? link(found.url, inside(node.children)) : inside(node.children)
    }
    case 'strong':
    case 'emphasis':
      return [{ type: node.type, children: inside(node.children) }]
    default:
      return []
  }
}

/** A link that nobody can follow from a post stays words. */
const link = (url: string, children: PhrasingContent[]): PhrasingContent[] =>
  isLink(url) || /^mailto:/i.test(url) ? [{ type: 'link', url, children }] : children

/** Texts that have come to stand side by side are one. */
function joined(nodes: readonly PhrasingContent[]): PhrasingContent[] {
  const all: PhrasingContent[] = []
  for (const node of nodes) {
    const before = all.at(-1)
    if (node.type === 'text' && before?.type === 'text')
      all.splice(-1, 1, text((before.value + node.value).replace(/ {2,}/g, ' ')))
    else all.push(node)
  }
  return all
}
