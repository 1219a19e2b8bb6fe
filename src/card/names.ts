import type { Value } from '../length/evaluate.ts'

/** What a measure in braces, or an expression in a card block, can be looked up in. */
export interface Names {
  /**
   * The value of a path such as `['sea wall', 'height']`.
   *
   * @param at where in the expression's text the path stands.
   * @throws ExpressionError for a name or part that does not exist, or that needs itself.
   */
  lookup(path: readonly string[], at: { readonly start: number; readonly end: number }): Value
  /** All paths that have a value, for completion and for suggestions, such as `sea wall.height`. */
  paths(): readonly string[]
}
