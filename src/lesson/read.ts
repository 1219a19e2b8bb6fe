import type { Root } from 'mdast'
import type { Finding } from '../length/finding.ts'
import { convertChildren } from './convert/convert.ts'
import type { Walk } from './convert/walk.ts'
import { inFileOrder } from './file-order.ts'
import { frontMatterBlock, readFrontMatter } from './front-matter.ts'
import type { Lesson } from './lesson.ts'
import { parseMarkdown } from './parse.ts'
import { makeSource } from './source.ts'
import { tooMuchIn } from './syntax/too-much.ts'

/**
 * Reads a lesson. Never throws: whatever is wrong with the file is a finding, and everything else of it is read.
 *
 * @param text of a Markdown file.
 */
export function readLesson(text: string): Lesson {
  const much = tooMuchIn(text)
  if (!much) return lessonOf(parseMarkdown(text), text)
  // What stands before it is read; positions are the same in the whole text.
  const lesson = lessonOf(parseMarkdown(text.slice(0, much.start)), text)
  const { start, end, message, suggestion } = much
  const place = lesson.source.place(start, end)
  const found: Finding = { rule: 'too-much', severity: 'error', message, suggestion, place }
  return { ...lesson, findings: inFileOrder([...lesson.findings, found]) }
}

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
  const walk: Walk = { source, findings, cards: [], supplies: [], steps: [], toldOpen: 0, figures: 0 }
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
