import type { Length, Unit } from '../../length/length.ts'
import type { UnitName } from '../../length/tokens.ts'

/** A measure that stands in words as plain numbers: `5⅞"`, `6 by 4 inches`, `1, 2, 8 and 9 in`, `half an inch`. */
export interface Literal {
  /** A size is width and height; a list may be taken apart when each number of it has its unit; a sheet is `A6`. */
  readonly kind: 'length' | 'size' | 'list' | 'range' | 'sheet'
  readonly lengths: readonly Length[]
  /** How far apart the marks are that each length is written with: 1/8 in for `5 7/8 in`, 1 mm for `14.9 cm`. */
  readonly steps: readonly Length[]
  /** The unit of the last length. */
  readonly unit: UnitName
  /** From where to where in the words. */
  readonly start: number
  readonly end: number
  /** The lengths of a list one by one, when each has its own unit. */
  readonly parts?: readonly Literal[]
}

/** Whose ruler a literal is read off. */
export const systemOf = ({ unit }: Pick<Literal, 'unit'>): Unit =>
  unit === 'in' || unit === 'ft' ? 'in' : 'mm'
