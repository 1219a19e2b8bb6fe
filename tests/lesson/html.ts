import type { Root } from 'mdast'
import rehypeStringify from 'rehype-stringify'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'

/** Plain CommonMark to HTML, with nothing of a lesson. */
const plain = unified()
  .use(remarkParse)
  .use(remarkRehype, { allowDangerousHtml: true })
  .use(rehypeStringify, {
    allowDangerousHtml: true,
    closeSelfClosing: true,
    allowDangerousCharacters: true,
    characterReferences: { useNamedReferences: true, omitOptionalSemicolons: false },
  })
  .freeze()

/** HTML of a tree that has only nodes of CommonMark in it. */
export const htmlOf = (tree: Root): string => plain.stringify(plain.runSync(structuredClone(tree)))

/** HTML of a text as CommonMark without anything else. */
export const plainHtml = (text: string): string => htmlOf(plain.parse(text))
