import type { Span } from './engine.ts'

/** What stands at a place of the text. */
export interface Explained extends Span {
  /** The value in the unit of the print, and in the other one. */
  readonly value?: string
  readonly other?: string
  /** Where it comes from, in plain sentences. */
  readonly lines: readonly string[]
}
