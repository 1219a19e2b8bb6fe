import Fraction from 'fraction.js'
import { type Expression, ExpressionError } from './expression.ts'
import { type Length, minus, mm, negative, over, part, plus, type Size, times, unitLength } from './length.ts'
import type { UnitName } from './tokens.ts'

/** What an expression can come to. */
export type Value =
  | { readonly kind: 'number'; readonly value: Fraction }
  | { readonly kind: 'length'; readonly value: Length }
  | { readonly kind: 'size'; readonly value: Size }
  | { readonly kind: 'lengths'; readonly value: readonly Length[] }
  | { readonly kind: 'text'; readonly value: string }

/** The lengths of a value: width and height of a size; none of a number or a text. */
export function lengthsOf(value: Value): readonly Length[] {
  if (value.kind === 'length') return [value.value]
  if (value.kind === 'size') return [value.value.width, value.value.height]
  return value.kind === 'lengths' ? value.value : []
}

/**
 * Looks a name up, such as `['sea wall', 'height']`.
 *
 * @throws ExpressionError when there is no such name; `at` is where in the text it stands.
 */
export type Lookup = (path: readonly string[], at: { start: number; end: number }) => Value

const noNames: Lookup = (path, at) => {
  throw new ExpressionError(
    'unknown-name',
    `Unexpected name \`${path.join('.')}\`, expected a plain length`,
    at,
    'Write a length such as `5 7/8 in` or `149 mm`',
  )
}

/**
 * Computes an expression. Lengths and plain numbers do not mix: a length may be multiplied or divided by a number,
 * two lengths may be added or divided (which gives a number).
 *
 * @throws ExpressionError with the place of the part that cannot be computed.
 */
export function evaluate(expression: Expression, lookup: Lookup = noNames): Value {
  const e = expression
  switch (e.kind) {
    case 'number':
      return { kind: 'number', value: e.value }
    case 'length':
      return { kind: 'length', value: lengthOf(e.value, e.unit) }
    case 'name':
      return lookup(e.path, e)
    case 'negative': {
      const of = evaluate(e.of, lookup)
      if (of.kind === 'number') return { kind: 'number', value: of.value.neg() }
      if (of.kind === 'length') return { kind: 'length', value: negative(of.value) }
      throw new ExpressionError('dimension', `Cannot take the negative of ${a(of)}`, e)
    }
    case 'size':
      return { kind: 'size', value: sizeOf(e, lookup) }
    case 'binary':
      return combine(e, evaluate(e.left, lookup), evaluate(e.right, lookup))
  }
}

/** A length, and only that. A plain number other than zero is an error that asks for its unit. */
export function evaluateLength(expression: Expression, lookup?: Lookup): Length {
  const value = evaluate(expression, lookup)
  if (value.kind === 'length') return value.value
  if (value.kind === 'number') {
    if (value.value.equals(0)) return mm(0)
    const n = value.value.toFraction(true)
    throw new ExpressionError(
      'no-unit',
      `\`${n}\` has no unit, expected a length`,
      expression,
      `Write \`${n} in\` or \`${n} mm\``,
    )
  }
  throw new ExpressionError(
    'dimension',
    `This is ${a(value)}, expected a length`,
    expression,
    'Write a length such as `5 7/8 in` or `149 mm`',
  )
}

function sizeOf(e: Expression & { kind: 'size' }, lookup: Lookup): Size {
  // In `8 x 6 in` the unit stands once, behind the second number.
  const unit = e.height.kind === 'length' ? e.height.unit : undefined
  const width: Expression =
    e.width.kind === 'number' && unit ? { ...e.width, kind: 'length', value: e.width.value, unit } : e.width
  return { width: evaluateLength(width, lookup), height: evaluateLength(e.height, lookup) }
}

/** What a sum, difference, product or quotient of two values comes to. Throws ExpressionError. */
export function combine(e: Expression & { kind: 'binary' }, l: Value, r: Value): Value {
  const number = (value: Fraction): Value => ({ kind: 'number', value })
  const length = (value: Length): Value => ({ kind: 'length', value })
  if (e.sign === '/' && (r.kind === 'number' || r.kind === 'length') && r.value.equals(0))
    throw new ExpressionError(
      'expression',
      'Cannot divide by zero',
      e.right,
      'Divide by something larger than zero',
    )
  if (l.kind === 'number' && r.kind === 'number') {
    const [x, y] = [l.value, r.value]
    return number(
      { '+': x.add(y), '-': x.sub(y), '*': x.mul(y), '/': e.sign === '/' ? x.div(y) : new Fraction(0) }[
        e.sign
      ],
    )
  }
  if (l.kind === 'length' && r.kind === 'length') {
    if (e.sign === '+') return length(plus(l.value, r.value))
    if (e.sign === '-') return length(minus(l.value, r.value))
    if (e.sign === '/') return number(over(l.value, r.value))
  }
  if (l.kind === 'length' && r.kind === 'number') {
    if (e.sign === '*') return length(times(l.value, r.value))
    if (e.sign === '/') return length(part(l.value, r.value))
  }
  if (l.kind === 'number' && r.kind === 'length' && e.sign === '*') return length(times(r.value, l.value))
  throw new ExpressionError('dimension', `Cannot work out ${a(l)} ${e.sign} ${a(r)}`, e, cure(e, l, r))
}

function cure(e: Expression & { kind: 'binary' }, l: Value, r: Value): string {
  if ((e.sign === '+' || e.sign === '-') && [l, r].some((v) => v.kind === 'number'))
    return 'Give the plain number a unit, such as `in` or `mm`'
  if (e.sign === '/' && l.kind === 'number') return 'Write a fraction without spaces, such as `3/4 in`'
  if (e.sign === '*' && l.kind === 'length' && r.kind === 'length')
    return 'Multiply a length by a plain number'
  return 'Take one part of it, such as `.width`'
}

const lengthOf = (value: Fraction, unit: UnitName): Length => mm(value.mul(unitLength[unit]))

const words = {
  number: 'a plain number',
  length: 'a length',
  size: 'a width and height',
  lengths: 'a list of lengths',
  text: 'a text',
}
const a = (value: Value): string => words[value.kind]
