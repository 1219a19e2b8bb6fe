import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A tag of a PDF with what is told of it: its words, and what stands in it. */
export interface TagNode {
  readonly role: string
  readonly alt?: string
  /** The words of its own, in the order in which they are told. */
  readonly words: string
  readonly inside: readonly TagNode[]
}

interface Struct {
  readonly role?: string
  readonly alt?: string
  readonly type?: string
  readonly id?: string
  readonly children?: readonly Struct[]
}

/** The tree of tags of one page, with the words that its leaves name. */
export async function tagTree(pdf: PDFDocumentProxy, number: number): Promise<TagNode> {
  const page = await pdf.getPage(number)
  const { items } = await page.getTextContent({ includeMarkedContent: true })
  const words = new Map<string, string>()
  const open: (string | undefined)[] = []
  for (const item of items) {
    if ('str' in item) {
      const id = open.findLast((one) => one !== undefined)
      if (id !== undefined) words.set(id, `${words.get(id) ?? ''}${item.str}${item.hasEOL ? ' ' : ''}`)
    } else if (item.type === 'endMarkedContent') open.pop()
    else open.push(item.id)
  }
  const nodeOf = ({ role = '', alt, children = [] }: Struct): TagNode => ({
    role,
    ...(alt !== undefined && { alt }),
    words: children.map(({ type, id = '' }) => (type === 'content' ? (words.get(id) ?? '') : '')).join(''),
    inside: children.filter(({ type }) => type === undefined).map(nodeOf),
  })
  return nodeOf((await page.getStructTree()) as Struct)
}

/** A tag and all that stand in it, in reading order. */
export const allTags = (node: TagNode): TagNode[] => [node, ...node.inside.flatMap(allTags)]

/** All words of a tag and of those in it, in reading order. */
export const wordsIn = (node: TagNode): string =>
  allTags(node)
    .map(({ words }) => words)
    .join('')
    .replace(/\s+/g, ' ')
    .replaceAll('\u2044', '/')
    .trim()
