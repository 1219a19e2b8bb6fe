import Fraction from 'fraction.js'

declare const millimetres: unique symbol

/** An exact length: a rational number of millimetres. Never a plain number, so units cannot be mixed up. */
export type Length = Fraction & { readonly [millimetres]: true }

/** What a ratio may be given as: a whole number, or an exact fraction. */
export type Ratio = Fraction | bigint | number

/** The two units a lesson may be written in. */
export type Unit = 'in' | 'mm'

/** Width and height, in that order. */
export interface Size {
  readonly width: Length
  readonly height: Length
}

/** Millimetres in one of each unit, exactly. The inch is 127/5 mm (1959 international agreement). */
export const unitLength = {
  mm: new Fraction(1),
  cm: new Fraction(10),
  m: new Fraction(1000),
  in: new Fraction(127, 5),
  ft: new Fraction(1524, 5),
} as const

/** `n` millimetres. */
export const mm = (n: Ratio): Length => new Fraction(n) as Length

/** `n / d` inches, exactly. */
export const inches = (n: Ratio, d: Ratio = 1): Length =>
  new Fraction(n).div(new Fraction(d)).mul(unitLength.in) as Length

/** No length at all. */
export const zero: Length = mm(0)

export const plus = (...lengths: readonly Length[]): Length =>
  lengths.reduce((sum: Fraction, length) => sum.add(length), zero) as Length
export const minus = (a: Length, ...rest: readonly Length[]): Length => a.sub(plus(...rest)) as Length
export const times = (a: Length, k: Ratio): Length => a.mul(new Fraction(k)) as Length
export const negative = (a: Length): Length => a.neg() as Length
/** How many times `b` goes into `a`: a ratio, without unit. Throws a RangeError when `b` is zero. */
export const over = (a: Length, b: Length): Fraction => {
  if (b.n === 0n) throw new RangeError('Cannot divide by a length of zero')
  return a.div(b)
}
/** `a` cut into `k` equal parts, exactly. */
export const part = (a: Length, k: Ratio): Length => a.div(new Fraction(k)) as Length

export const larger = (a: Length, b: Length): Length => (a.gte(b) ? a : b)
export const smaller = (a: Length, b: Length): Length => (a.lte(b) ? a : b)
export const same = (a: Length, b: Length): boolean => a.equals(b)
export const shorter = (a: Length, b: Length): boolean => a.lt(b)

/** The length in `unit`, as a number for machines. */
export const numberIn = (a: Length, unit: Unit): number => a.div(unitLength[unit]).valueOf()
/** The length in millimetres, as a binary float: for drawing and for solving angles, never for a printed measure. */
export const toMm = (a: Length): number => a.valueOf()
