import { errorsIn } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import { applyEdits, type Edit } from '../edits.ts'
import { fillLesson } from '../fill.ts'
import type { FilledLesson, Lesson } from '../lesson.ts'
import { alignment } from '../prose/alignment.ts'
import { readLesson } from '../read.ts'
import { proseOf } from '../rules/prose.ts'
import { looseInLesson } from './in-lesson.ts'
import type { LooseNumber } from './loose-numbers.ts'
import { measureOf, type Proposal } from './proposal.ts'

/** A plain number that has become a measure. */
export interface Placed {
  readonly number: LooseNumber
  readonly proposal: Proposal
  readonly edit: Edit
}

/** A lesson as read and filled in, with its plain numbers. */
export interface Looked {
  readonly lesson: Lesson
  readonly filled: FilledLesson
  /** Whether all of its cards could be built, so that there are names. */
  readonly complete: boolean
  readonly words: readonly LooseNumber[]
  readonly front: readonly LooseNumber[]
}

/** A lesson as read and filled in. */
export type Read = Pick<Looked, 'lesson' | 'filled'>

/**
 * Reads a lesson and fills it in, in its own size and unit.
 *
 * @param units its unit, if it is another than it says itself.
 */
export function read(text: string, units?: Unit): Read {
  const asWritten = readLesson(text)
  const lesson = units ? { ...asWritten, frontMatter: { ...asWritten.frontMatter, units } } : asWritten
  return { lesson, filled: fillLesson(lesson) }
}

/** Looks for the plain numbers of a lesson. One without a whole card has no names, so none is looked for. */
export function lookAt({ lesson, filled }: Read, mayConvert = false): Looked {
  const complete = filled.cards.length > 0 && filled.cards.length === lesson.cards.length
  const found = complete
    ? looseInLesson({ lesson, filled, wishes: {}, prose: proseOf({ lesson, filled }) }, mayConvert)
    : { words: [], front: [] }
  return { lesson, filled, complete, ...found }
}

/**
 * The change that puts a measure in the place of a plain number.
 *
 * @returns undefined when the number does not stand in the file as it is read, or where braces would mean something else.
 */
export function editFor({ words, place }: LooseNumber, proposal: Proposal, text: string): Edit | undefined {
  const { offset: start, end } = place
  if (start === undefined || end === undefined) return undefined
  const raw = text
    .slice(start, end)
    .replace(/[ \t]*(?:\r\n?|\n)(?:[ \t]*>?)*|&(?:nbsp|thinsp|#160|#xa0);|[\u00a0\u2009\u202f]/gi, ' ')
  if (!alignment(raw, words)) return undefined
  // Behind a backslash a brace is text, and behind a bracket it belongs to what the bracket closes.
  if (/[\\\]]$/.test(text.slice(0, start))) return undefined
  return { start, end, text: measureOf(proposal) }
}

/**
 * Makes changes, if the lesson is as good afterwards. When all together are not, those that are not good by themselves
 * are left out.
 *
 * @param always a change that is made whatever becomes of the others.
 * @param isGood whether a lesson with some of the changes made may be kept.
 */
export function makeEdits(
  before: Read,
  placed: readonly Placed[],
  isGood: (after: Read) => boolean,
  always: readonly Edit[] = [],
): { after: Read; placed: readonly Placed[] } {
  if (placed.length + always.length === 0) return { after: before, placed }
  const made = (some: readonly Placed[]): Read =>
    read(applyEdits(before.lesson.source.text, [...always, ...some.map(({ edit }) => edit)]))
  const all = made(placed)
  if (isGood(all)) return { after: all, placed }
  const good = placed.filter((one) => isGood(made([one])))
  const after = made(good)
  return isGood(after) ? { after, placed: good } : { after: before, placed: [] }
}

/** Whether a lesson has more errors than it had. */
export function hasNewErrors(before: Read, after: Read): boolean {
  const count = ({ filled }: Read): number => errorsIn(filled.findings).length
  return count(after) > count(before)
}
