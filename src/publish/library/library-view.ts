import type { Unit } from '../../length/length.ts'
import type { FindingJson } from '../../workshop/finding-json.ts'
import type { Paper } from '../page-css.ts'

/** What the pages of a library show. Addresses are from where the index is. */
export interface LibraryView {
  readonly title: string
  readonly lessons: readonly LibraryLesson[]
  /** What is wrong in the library file. */
  readonly findings: readonly FindingJson[]
  /** What stood in the way of prints, besides mistakes in lessons. */
  readonly problems: readonly { readonly message: string; readonly lessons: readonly string[] }[]
}

/** A lesson of a library. */
export interface LibraryLesson {
  /** Of its file, from the folder of the library. */
  readonly path: string
  /** Where its prints and its page are. */
  readonly folder: string
  readonly title: string
  readonly summary?: string
  readonly level: string
  readonly lang: string
  readonly words: string
  /** The figure of its card: SVG of ours. */
  readonly picture?: string
  readonly prints: readonly LibraryPrint[]
  /** Prints of an earlier text, that mistakes are in the way of now. */
  readonly older: readonly LibraryPrint[]
  readonly findings: readonly FindingJson[]
}

/** A print that can be opened. */
export interface LibraryPrint {
  readonly name: string
  readonly size: string
  readonly unit: Unit
  readonly paper: Paper
  readonly theme: string
  /** Whether there is a PDF besides the page. */
  readonly pdf: boolean
}

/** The page that leads to the prints of a lesson, in its folder. */
export const lessonPageName = 'index.html'

/** An address of a file whose path has any letters. */
export const addressOf = (path: string): string => `./${path.split('/').map(encodeURIComponent).join('/')}`

/** `1 print`, `3 prints`. */
export const counted = (n: number, one: string, several = `${one}s`): string =>
  `${n} ${n === 1 ? one : several}`

/** Each of them once, in the order in which they come. */
export const unique = <T>(items: readonly T[]): T[] => [...new Set(items)]
