import type Fraction from 'fraction.js'
import type { UnitName } from './tokens.ts'

/** What a teacher may write where a length is wanted, as a tree. Offsets count from the start of the text. */
export type Expression = { readonly start: number; readonly end: number } & (
  | { readonly kind: 'number'; readonly value: Fraction }
  | { readonly kind: 'length'; readonly value: Fraction; readonly unit: UnitName }
  | { readonly kind: 'name'; readonly path: readonly string[] }
  | { readonly kind: 'negative'; readonly of: Expression }
  | {
      readonly kind: 'binary'
      readonly sign: '+' | '-' | '*' | '/'
      readonly left: Expression
      readonly right: Expression
    }
  | { readonly kind: 'size'; readonly width: Expression; readonly height: Expression }
)

/** A mistake in an expression: what was found, what was expected, and the part of the text it is about. */
export class ExpressionError extends Error {
  readonly rule: string
  readonly start: number
  readonly end: number
  readonly suggestion: string | undefined

  constructor(rule: string, message: string, at: { start: number; end: number }, suggestion?: string) {
    super(message)
    this.rule = rule
    this.start = at.start
    this.end = at.end
    this.suggestion = suggestion
  }
}
