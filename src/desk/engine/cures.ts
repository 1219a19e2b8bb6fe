import type { Finding } from '../../length/finding.ts'
import { autoBorder } from './cures/auto-border.ts'
import { closeCallout } from './cures/callouts.ts'
import { putFigures } from './cures/figures.ts'
import { keepLength } from './cures/limits.ts'
import { nameMeasure } from './cures/loose-measures.ts'
import { listTool, unlistSupply } from './cures/supplies.ts'
import { timeClass, timeStep, timeWords } from './cures/times.ts'
import { writeInstead } from './cures/write-instead.ts'
import type { Cure } from './engine.ts'
import type { KeptLesson } from './kept-lesson.ts'

/** What makes cures of findings of some rules. */
export type Healer = (finding: Placed, kept: KeptLesson) => Cure[]

/** A finding whose place is known to the letter. */
export interface Placed extends Omit<Finding, 'place'> {
  readonly from: number
  readonly to: number
  /** What stands there. */
  readonly was: string
}

const healers: Readonly<Record<string, Healer>> = {
  'loose-measure': nameMeasure,
  'untimed-step': timeStep,
  'loose-time': timeWords,
  'class-time': timeClass,
  'open-callout': closeCallout,
  'step-without-figure': putFigures,
  'unlisted-tool': listTool,
  'unused-supply': unlistSupply,
  setback: autoBorder,
  'impossible-size': keepLength,
  'sticks-out': keepLength,
  'letters-too-wide': keepLength,
}

/**
 * The suggestion of a finding as changes of the text, where it is one that can be made without asking anything more.
 * Each is known to cure: the finding is gone afterwards.
 *
 * @param text that was looked at.
 * @param kept the lesson that was read from it.
 */
export function curesOf(finding: Finding, text: string, kept: KeptLesson): readonly Cure[] {
  const { place, ...rest } = finding
  const { offset: from, end: to } = place ?? {}
  if (from === undefined || to === undefined || from > to || to > text.length) return []
  const placed: Placed = { ...rest, from, to, was: text.slice(from, to) }
  return (healers[finding.rule] ?? writeInstead)(placed, kept)
}
