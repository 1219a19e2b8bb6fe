import type { BlockContent, Root } from 'mdast'
import type { Processor } from 'unified'
import type { VFile } from 'vfile'
import type { Length, Size, Unit } from '../length/length.ts'
import { readLength, readSize } from '../length/text.ts'
import { learnAll } from '../wording/languages.ts'
import { fillLesson } from './fill.ts'
import type { FilledLesson, Wishes } from './lesson.ts'
import { toMessages } from './messages.ts'
import type { FigureNode } from './nodes.ts'
import { toOrdinary } from './ordinary.ts'
import { hasMark } from './parse.ts'
import { lessonOf } from './read.ts'
import { lessonSyntax } from './syntax/syntax.ts'

// A lesson of any language may come at any time, and functions that answer at once cannot wait for its words.
learnAll()

/** What the plugin can be told. */
export interface FoldloreOptions {
  /** Another closed size of the card: `6 x 6 in`. */
  readonly closed?: Size | string
  readonly units?: Unit
  /** Another ruler grid: `1/8 in`. */
  readonly grid?: Length | string
  /** Gives what stands in the place of a figure; without it, and where it gives nothing, the caption stays. */
  readonly figure?: (figure: FigureNode, lesson: FilledLesson) => BlockContent | undefined
}

declare module 'vfile' {
  interface DataMap {
    /** The lesson that was read, built and proven. */
    lesson: FilledLesson
  }
}

/**
 * A remark plugin, for lessons in a unified pipeline of one's own. It adds the syntax of a lesson to `remark-parse`,
 * builds and proves the cards, fills the measures in, puts all findings on the file as messages, and leaves a tree of
 * ordinary mdast. The lesson itself is in `file.data.lesson`.
 *
 * @throws ExpressionError when the size or the grid in the options cannot be read.
 */
export default function foldlore(
  this: Processor,
  options: FoldloreOptions = {},
): (tree: Root, file: VFile) => Root {
  lessonSyntax.call(this)
  const wishes = wishesOf(options)
  return (tree, file) => {
    const text = String(file)
    const [front] = tree.children
    // remark-parse does not count a byte order mark.
    const filled = fillLesson(lessonOf(tree, hasMark(text) ? text.slice(1) : text), wishes)
    toMessages(filled.findings, file)
    file.data.lesson = filled
    const { figure } = options
    const body = toOrdinary(structuredClone(filled.tree), figure && ((node) => figure(node, filled)))
    return { ...body, children: front?.type === 'yaml' ? [front, ...body.children] : body.children }
  }
}

const wishesOf = ({ closed, units, grid }: FoldloreOptions): Wishes => ({
  ...(closed !== undefined && { closed: typeof closed === 'string' ? readSize(closed) : closed }),
  ...(units && { units }),
  ...(grid !== undefined && { grid: typeof grid === 'string' ? readLength(grid) : grid }),
})
