import type { Box } from '../fit/cutting/boxes.ts'

/**
 * A cutting problem of one stock in whole marks: the common measure of all sides. The gap of the knife is already added
 * to every side of the pieces and once to the sheets, so that nothing is lost between two cuts any more.
 */
export interface Problem {
  /** How many of each kind of piece are wanted. */
  readonly counts: readonly number[]
  /** What one of each kind takes of a sheet. */
  readonly areas: readonly number[]
  readonly shapes: readonly Shape[]
  readonly supplies: readonly Supply[]
}

/** A size of sheet, and every way in which a piece may lie on it. */
export interface Shape {
  readonly width: number
  readonly height: number
  readonly ways: readonly Way[]
}

/** A kind of piece as it may lie on a sheet. */
export interface Way {
  readonly kind: number
  readonly width: number
  readonly height: number
  readonly turned: boolean
}

/** Sheets of one shape that are to be had at one price. */
export interface Supply {
  readonly shape: number
  /** Infinity for as many as are wanted. */
  readonly limit: number
  /** Whether using one counts as a sheet: an offcut does not. */
  readonly counted: boolean
  /** Of one sheet, in the smallest coin. */
  readonly price: number
}

/** What may be cut from a sheet of a shape: how many of each kind, and the box that they make. */
export interface Pattern {
  readonly shape: number
  readonly counts: readonly number[]
  readonly box: Box
}

/** So many sheets are cut like this. */
export interface Use {
  readonly pattern: Pattern
  readonly times: number
}

/** How many of each kind are still wanted after some sheets; never fewer than none. */
export const leftAfter = (counts: readonly number[], uses: readonly Use[]): number[] =>
  counts.map((count, kind) =>
    Math.max(
      0,
      uses.reduce((left, { pattern, times }) => left - times * (pattern.counts[kind] ?? 0), count),
    ),
  )
