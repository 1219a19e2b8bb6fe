import type { Unit } from '../../length/length.ts'
import type { MadeHandout } from '../../publish/handout.ts'
import type { Paper } from '../../publish/page-css.ts'
import type { FindingJson } from '../../workshop/finding-json.ts'
import type { LessonAbout, WantedPrint } from './records.ts'

/** What a thread is asked to make of a lesson. Plain data: it goes to another thread. */
export interface LessonWork {
  /** From the folder of the library. */
  readonly path: string
  readonly place: string
  /** The folder of the library: what is read is noted from there. */
  readonly folder: string
  readonly bytes: Uint8Array
  readonly sizes: { readonly own: boolean; readonly offered: boolean; readonly more: readonly string[] }
  readonly units: readonly ('own' | Unit)[]
  readonly papers: readonly Paper[]
  /** As written, and what finds it. */
  readonly themes: readonly { readonly text: string; readonly theme: string }[]
  /** Keys of the prints that lie there already. */
  readonly have: readonly string[]
}

/** What a thread tells of a lesson: first what it is, then each print. */
export type LessonNews =
  | {
      readonly kind: 'about'
      readonly about: LessonAbout
      /** The figure of the card; none where it cannot be drawn. */
      readonly picture?: string
      /** All prints that can be made. */
      readonly wanted: readonly WantedPrint[]
      /** Keys of those that mistakes are in the way of; undefined when that is all of them. */
      readonly broken?: readonly string[]
      readonly findings: readonly FindingJson[]
    }
  | {
      readonly kind: 'print'
      readonly print: WantedPrint
      /** Missing when its figures cannot be drawn. */
      readonly made?: MadeHandout
      /** What was found only when it was drawn. */
      readonly findings: readonly FindingJson[]
      /** Files that were read for it and those before it, with their hashes; null where there is none. */
      readonly reads: Readonly<Record<string, string | null>>
    }
