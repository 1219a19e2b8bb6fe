import type { Finding } from '../../length/finding.ts'
import type { FilledLesson, Lesson } from '../lesson.ts'
import type { FigureNode } from '../nodes.ts'

/** What a rule looks at: the lesson as read, and as filled in so far. */
export interface RuleInput {
  readonly lesson: Lesson
  readonly filled: Omit<FilledLesson, 'findings'>
  readonly figures: readonly FigureNode[]
  /** Whether a measure needs a name of a card. */
  readonly needsNames: boolean
  /** Whether all cards could be built. */
  readonly complete: boolean
}

/** One thing that a lesson as a whole can get wrong. The rule's name is that of its findings. */
export type Rule = (input: RuleInput) => Finding[]

/** The start of a lesson's body, for what is wrong with all of it. */
export const startOf = ({
  lesson,
}: RuleInput): { line: number; column: number; offset: number; end: number } => {
  const offset = lesson.tree.children[0]?.position?.start.offset ?? 0
  const { line = 1, column = 1 } = lesson.tree.children[0]?.position?.start ?? {}
  return { line, column, offset, end: offset }
}
