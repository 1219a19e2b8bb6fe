import type { Root } from 'mdast'
import { convertChildren } from './convert/convert.ts'
import type { Walk } from './convert/walk.ts'
import { inFileOrder } from './file-order.ts'
import { frontMatterBlock, readFrontMatter } from './front-matter.ts'
import type { Lesson } from './lesson.ts'
import { parseMarkdown } from './parse.ts'
import { makeSource } from './source.ts'

/**
 * Reads a lesson. Never throws: whatever is wrong with the file is a finding, and everything else of it is read.
 *
 * @param text of a Markdown file.
 */
export const readLesson = (text: string): Lesson => lessonOf(parseMarkdown(text), text)

/**
 * The lesson in a tree that has been parsed with the syntax of a lesson. The tree is changed.
 *
 * @param text that the positions of the tree are of.
 */
export function lessonOf(tree: Root, text: string): Lesson {
  const source = makeSource(text)
  const front = frontMatterBlock(tree, source)
  const { frontMatter, findings } = readFrontMatter(front, source)
  if (front) tree.children.shift()
  const walk: Walk = { source, findings, cards: [], supplies: [], steps: [], toldOpen: 0 }
  convertChildren(tree, walk, { top: true, quoted: false, callout: false, stray: [] })
  const [supplies] = walk.supplies
  return {
    source,
    frontMatter,
    ...(front && { frontMatterBlock: front }),
    tree,
    cards: walk.cards,
    ...(supplies && { supplies }),
    steps: walk.steps,
    findings: inFileOrder(findings),
  }
}
