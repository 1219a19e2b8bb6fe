import type { Place } from '../../length/finding.ts'
import type { CalloutKind, MeasureNode } from '../nodes.ts'

/** A stretch of words, from where to where. */
export interface Stretch {
  readonly start: number
  readonly end: number
}

/** Whether two stretches have a character in common. */
export const overlaps = (a: Stretch, b: Stretch): boolean => a.start < b.end && b.start < a.end

/** A measure within the words of a sentence. */
export interface SaidMeasure {
  readonly node: MeasureNode
  /** From where to where its text stands in the words. */
  readonly start: number
  readonly end: number
  /** The names that it is worked out from, such as `['backdrop', 'width']`. */
  readonly paths: readonly (readonly string[])[]
}

/** One sentence that a reader of the handout reads. */
export interface Sentence {
  /** As it is printed, measures filled in. Line endings are spaces. */
  readonly words: string
  readonly measures: readonly SaidMeasure[]
  /** Stretches of the words that are meant as they are, from where to where. */
  readonly meant: readonly { readonly start: number; readonly end: number }[]
  /** Number of the step that it belongs to. */
  readonly step?: number
  /** The innermost call-out that it stands in. */
  readonly callout?: CalloutKind
  /** What it is part of. */
  readonly kind: 'text' | 'heading' | 'caption' | 'cell'
  /**
   * Where a stretch of the words stands in the file. Without an offset when it does not stand there as it is, so that it
   * can be told but not replaced.
   */
  readonly place: (start: number, end: number) => Place
}
