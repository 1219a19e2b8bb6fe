import type { Length, Size } from '../../length/length.ts'

/** A size as the teacher wrote it, and as read. */
export interface NamedSize {
  readonly text: string
  readonly size: Size
}

/** Paper to cut from. */
export interface Paper {
  /** One sheet of each stock, or all the scraps that there are of one. */
  readonly kind: 'sheet' | 'scraps'
  /** Missing when the teacher did not say; `everything` is all stocks together. */
  readonly stock?: string
  readonly sizes: readonly NamedSize[]
}

/** The stock that means pieces of every stock. */
export const everything = 'everything'

/** What is asked of a lesson, the other way round. */
export interface Question {
  readonly paper: readonly Paper[]
  /** The only stock whose pieces count, for paper that does not name its own. */
  readonly stock?: string
  /** The name or the size of a bought envelope. */
  readonly envelope?: string
  /** A sheet that one piece is to use whole. */
  readonly whole?: NamedSize
  /** The piece that is to use it. */
  readonly piece?: string
  /** Whether to list the sizes at which the lettering fits. */
  readonly lettering?: boolean
  /** One side of the shut card, kept while the other is looked for. */
  readonly wide?: Length
  readonly high?: Length
}

/** A question that cannot be asked of this lesson, and what to ask instead. */
export class QuestionError extends Error {
  readonly suggestion: string

  constructor(message: string, suggestion: string) {
    super(message)
    this.suggestion = suggestion
  }
}
