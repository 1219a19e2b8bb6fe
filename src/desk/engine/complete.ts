/** Something that may be written. */
export interface Completion {
  /** The text that is put in from `from` to where the cursor is. */
  readonly insert: string
  readonly from: number
  /** What the list shows. */
  readonly label: string
  /** Beside it: the value of a measure, or what a word is. */
  readonly detail?: string
  /** A sentence about it. */
  readonly info?: string
  readonly kind:
    | 'fold'
    | 'key'
    | 'panel'
    | 'piece'
    | 'measure'
    | 'figure'
    | 'directive'
    | 'size'
    | 'stock'
    | 'word'
}
