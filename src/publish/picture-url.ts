import type { Definition, Image, ImageReference, Root } from 'mdast'
import { visit } from 'unist-util-visit'

/** The pictures of a lesson, by the address that stands in it. */
export type Pictures = ReadonlyMap<string, string>

/** Where a picture's address stands in the tree: in the picture itself or in a definition below. */
export const pictureUrl = (node: Image | ImageReference, tree: Root): string | undefined => {
  if (node.type === 'image') return node.url
  let url: string | undefined
  visit(tree, 'definition', (definition: Definition) => {
    if (definition.identifier === node.identifier) url ??= definition.url
  })
  return url
}

/** The pictures that a lesson shows, in the order of the file. */
export function pictureNodes(tree: Root): (Image | ImageReference)[] {
  const nodes: (Image | ImageReference)[] = []
  visit(tree, (node) => {
    if (node.type === 'image' || node.type === 'imageReference') nodes.push(node)
  })
  return nodes
}
