import type { Finding, Place } from '../../length/finding.ts'
import type { Course } from '../actions/course.ts'
import type { FilledLesson, Lesson, Wishes } from '../lesson.ts'
import type { FigureNode } from '../nodes.ts'
import type { FindMentions } from '../prose/mentions.ts'
import type { Named } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
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
  /** The words of the lesson. */
  readonly prose: Prose
  /** What it was filled in with, besides what it says itself. */
  readonly wishes?: Wishes
}

/** What a lesson says, read once for all rules, when one of them first asks. */
export interface Prose {
  readonly sentences: () => readonly Sentence[]
  /** Everything that its cards name. */
  readonly named: () => readonly Named[]
  readonly mentions: FindMentions
  /** How the making of the cards goes. It has nothing for a lesson that is not in English, or whose measures have mistakes. */
  readonly course: () => Course
  /** The same, in any language that has words for what is done: less is read of it than of English. */
  readonly deeds: () => Course
}

/** What the manual says of one rule. */
export interface RuleDoc {
  /** The name of its findings. */
  readonly name: string
  /** What it finds, as a sentence. */
  readonly about: string
  /** Steps, or another part of a lesson, that break it: see `exampleLesson`. */
  readonly example: string
}

/** What a lesson as a whole can get wrong. */
export interface Rule {
  readonly docs: readonly [RuleDoc, ...RuleDoc[]]
  readonly find: (input: RuleInput) => Finding[]
}

/** The start of a lesson's body, for what is wrong with all of it. */
export function startOf({ lesson: { tree } }: RuleInput): Place {
  const start = (tree.children[0] ?? tree).position?.start
  return placeOf(start && { start, end: start })
}
