/** A fold to start from, with its picture. */
export interface FoldOffered {
  readonly name: string
  readonly group: string
  readonly summary: string
  /** An SVG of the standing card with its text alternative. */
  readonly picture: string
}
