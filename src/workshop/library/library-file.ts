import type { Place } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import type { OtherSize } from '../../lesson/lesson.ts'

/** The papers that a library is printed on. */
export const libraryPapers = ['a4', 'letter'] as const

/** What a library says of its lessons: each is printed in every size, unit, paper and theme that stands here. */
export interface LibraryFile {
  readonly title?: string
  /** The lesson's own size, those that it is offered in, and others. */
  readonly sizes: { readonly own: boolean; readonly offered: boolean; readonly more: readonly OtherSize[] }
  /** `own` is the unit of the lesson. */
  readonly units: readonly ('own' | Unit)[]
  readonly papers: readonly (typeof libraryPapers)[number][]
  readonly themes: readonly LibraryTheme[]
  /** Files and folders, from the library's folder, whose lessons are left out. */
  readonly leftOut: readonly string[]
}

/** A theme as it is written: its name, or a folder from that of the library. */
export interface LibraryTheme {
  readonly text: string
  readonly place: Place
}
