import type { Finding, Place } from '../../length/finding.ts'
import type { FilledLesson, Lesson } from '../lesson.ts'
import type { FigureNode } from '../nodes.ts'
import { placeOf } from '../source.ts'

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
export function startOf({ lesson: { tree } }: RuleInput): Place {
  const start = (tree.children[0] ?? tree).position?.start
  return placeOf(start && { start, end: start })
}
