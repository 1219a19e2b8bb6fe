import type { Root } from 'mdast'
import type { FilledLesson } from '../../lesson/lesson.ts'
import type { Wording } from '../../wording/wording.ts'
import type { SizeChart } from '../../workshop/size-chart.ts'
import { asMarkdown } from './as-markdown.ts'
import { asPlain } from './as-plain.ts'
import { type Chapter, chaptersOf } from './chapters.ts'
import type { TextKind } from './kinds.ts'
import { lessonTree } from './lesson-tree.ts'
import { leftOutText, type Part, parts } from './parts.ts'
import { sizeBlocks } from './size-blocks.ts'

/** How a lesson is told as text. */
export interface TextOptions {
  readonly as: TextKind
  /** So many characters at most; without it, all of the lesson. */
  readonly limit?: number
  /** The chart of its sizes, where it is to stand in the text. */
  readonly sizes?: SizeChart
  readonly chapters?: boolean
}

export interface LessonText {
  /** Ends with a newline. */
  readonly text: string
  /** Counted in UTF-16 code units: no place counts more, unless it counts bytes. */
  readonly characters: number
  /** What has been left out to keep to the limit. */
  readonly leftOut: readonly Part[]
  readonly chapters: readonly Chapter[]
}

/** A text cannot be as short as that: its pieces and its cautions are never left out. */
export class TooShortError extends Error {
  override readonly name = 'TooShortError'
  /** The characters of the shortest text there is. */
  readonly least: number

  constructor(least: number, limit: number) {
    super(`The shortest text of this lesson has ${least} characters, and ${limit} are asked for`)
    this.least = least
  }
}

/**
 * A lesson as plain text or Markdown, for a post or below a film. What goes beyond a limit is left out in the order of
 * `parts`, each part whole, until it fits; what there is room for after all is put back, the most needed first.
 *
 * @throws TooShortError
 */
export function lessonText(lesson: FilledLesson, options: TextOptions): LessonText {
  const { as, limit = Number.POSITIVE_INFINITY, sizes, chapters = false } = options
  const extras = { chapters, sizes: sizes ? sizeBlocks(sizes, as) : [] }
  const written = as === 'md' ? asMarkdown : asPlain
  const treeWithout = (left: readonly Part[]): Root => lessonTree(lesson, new Set(left), extras)
  const textWithout = (left: readonly Part[]): string =>
    written(withNote(treeWithout(left), left, lesson.wording))
  const fits = (left: readonly Part[]): boolean => textWithout(left).length <= limit
  const whole = textWithout([])
  // What is not there is not said to be left out.
  const known = whole.length > limit ? parts.filter((part) => written(treeWithout([part])) !== whole) : []
  let left: Part[] = []
  for (const part of known) {
    if (fits(left)) break
    left = [...left, part]
  }
  if (!fits(left)) throw new TooShortError(textWithout(left).length, limit)
  for (const part of left.toReversed()) {
    const fewer = left.filter((other) => other !== part)
    if (fits(fewer)) left = fewer
  }
  // Where there are no steps, nothing is missing at the end of their sentences.
  if (left.includes('steps')) left = left.filter((part) => part !== 'sentences')
  const text = textWithout(left)
  return { text, characters: text.length, leftOut: left, chapters: chapters ? chaptersOf(lesson) : [] }
}

/** What is not there is said at the end. */
const withNote = (tree: Root, left: readonly Part[], wording: Wording): Root =>
  left.length === 0
    ? tree
    : {
        ...tree,
        children: [
          ...tree.children,
          { type: 'paragraph', children: [{ type: 'text', value: leftOutText(left, wording) }] },
        ],
      }
