import type { Unit } from '../../length/length.ts'
import type { Paper } from '../../publish/page-css.ts'
import type { FindingJson } from '../../workshop/finding-json.ts'

/** One print that a library wants: a lesson in a size, in a unit, on a paper, in a theme. */
export interface WantedPrint {
  /** Of its files, without the ending. */
  readonly name: string
  /** As it is told: `7 × 5 in`. */
  readonly size: string
  readonly unit: Unit
  readonly paper: Paper
  readonly theme: string
}

/** What tells a print of a lesson from its others. */
export const keyOf = ({ size, unit, paper, theme }: Omit<WantedPrint, 'name'>): string =>
  [size, unit, paper, theme].join('|')

/** A print that lies in its folder. */
export interface PrintRecord extends WantedPrint {
  /** What it was made of: the lesson, the program, the theme. */
  readonly of: string
  /** How many bytes its files have. */
  readonly html: number
  readonly pdf: number
  /** What was found only when it was drawn. */
  readonly findings: readonly FindingJson[]
}

/** What the index tells of a lesson. */
export interface LessonAbout {
  readonly title: string
  readonly summary?: string
  readonly level: string
  readonly lang: string
  /** All its words, each once, in small letters. */
  readonly words: string
}

/** What is known of a lesson from the last time. */
export interface LessonRecord {
  /** What its prints were to be made of: its text and the program. */
  readonly of: string
  /** What the library asked of it. */
  readonly wish: string
  /** Whether all was made that can be made. */
  readonly complete: boolean
  readonly about?: LessonAbout
  /** Files that were read for it, from the folder of the library, with their hashes; null where there was none. */
  readonly reads: Readonly<Record<string, string | null>>
  readonly prints: readonly PrintRecord[]
  /** Prints of an earlier text, that this one has mistakes in the way of. */
  readonly older: readonly PrintRecord[]
  readonly findings: readonly FindingJson[]
}

/** Lessons by their paths from the folder of the library. */
export type Records = ReadonlyMap<string, LessonRecord>
