import Fraction from 'fraction.js'
import type { Held } from '../../card/origins.ts'
import { evaluateLength, type Lookup } from '../../length/evaluate.ts'
import { ExpressionError } from '../../length/expression.ts'
import { formatBare, formatLength } from '../../length/format.ts'
import { type Length, minus, mm, same, times, type Unit, zero } from '../../length/length.ts'
import { parseMeasure } from '../../length/parse.ts'
import { readLength } from '../../length/text.ts'
import type { Answer } from './slopes.ts'

/** A share with a larger number above or below its line is no formula that somebody would write. */
const largest = 100n

/**
 * A number as a formula over the lengths that change it, such as `closed.width - 2 * leg - 1/8 in`, in the grammar of
 * card blocks.
 *
 * @param lengths as they are where the number has this value.
 * @param unit in which what no length accounts for is given, if it can be given exactly.
 * @returns undefined unless the number is a plain sum of shares and the formula comes to exactly it.
 */
export function formulaOf(
  value: Length,
  { slopes, isSum }: Answer,
  lengths: Held,
  unit: Unit,
): string | undefined {
  if (!isSum) return undefined
  const shares = [...slopes].flatMap(([name, slope]) => (slope ? [{ name, slope }] : []))
  if (shares.some(({ slope }) => slope.n > largest || slope.d > largest)) return undefined
  const rest = minus(value, ...shares.map(({ name, slope }) => times(lengths.get(name) ?? zero, slope)))
  const text = sumText(shares, rest, unit)
  if (text === undefined) return undefined
  const comesTo = amountOf(text, lengths)
  return comesTo && same(comesTo, value) ? text : undefined
}

/** What a formula comes to with these lengths; undefined when it cannot be read, because a name in it is no plain one. */
export function amountOf(formula: string, lengths: Held): Length | undefined {
  const lookup: Lookup = (path, at) => {
    const value = lengths.get(path.join('.'))
    if (value) return { kind: 'length', value }
    throw new ExpressionError('unknown-name', path.join('.'), at)
  }
  try {
    return evaluateLength(parseMeasure(formula).expression, lookup)
  } catch (error) {
    if (error instanceof ExpressionError) return undefined
    throw error
  }
}

interface Share {
  readonly name: string
  readonly slope: Fraction
}

function sumText(shares: readonly Share[], rest: Length, unit: Unit): string | undefined {
  const halves = sharedPart(shares, rest)
  if (halves > 1n) {
    const whole = shares.map(({ name, slope }) => ({ name, slope: slope.mul(new Fraction(halves)) }))
    const inside = plainSum(whole, times(rest, halves), unit)
    return inside && `(${inside}) / ${halves}`
  }
  return plainSum(shares, rest, unit)
}

/** 2 where everything is a half of something, 3 for thirds, if that saves a repetition; 1 otherwise. */
function sharedPart(shares: readonly Share[], rest: Length): bigint {
  const [first, ...others] = shares
  if (!first || first.slope.d === 1n || (others.length === 0 && same(rest, zero))) return 1n
  return others.every(({ slope }) => slope.d === first.slope.d) ? first.slope.d : 1n
}

function plainSum(shares: readonly Share[], rest: Length, unit: Unit): string | undefined {
  const given = constantText(mm(rest.abs()), unit)
  if (given === undefined) return undefined
  const isAdded = ({ slope }: Share): boolean => slope.s > 0n
  const added = shares.filter(isAdded).map(shareText)
  const taken = shares.filter((share) => !isAdded(share)).map(shareText)
  if (!same(rest, zero) || shares.length === 0) (rest.s < 0n ? taken : added).push(given)
  const [first, ...more] = added
  if (first === undefined) return taken.length === 0 ? undefined : `-${taken.join(' - ')}`
  return [first, ...more.map((text) => `+ ${text}`), ...taken.map((text) => `- ${text}`)].join(' ')
}

function shareText({ name, slope }: Share): string {
  const [above, below] = [slope.n, slope.d]
  if (below === 1n) return above === 1n ? name : `${above} * ${name}`
  return above === 1n ? `${name} / ${below}` : `${name} * ${above}/${below}`
}

/** A length that no name supplies, exactly: in this unit or the other, else none. */
function constantText(x: Length, unit: Unit): string | undefined {
  const other: Unit = unit === 'in' ? 'mm' : 'in'
  return [unit, other].map((u) => formatLength(x, u)).find((text) => same(readLength(text), x))
}

/** How much of one thing another is: `1/2`, `2`. */
export const shareOf = (slope: Fraction): string => slope.toFraction(true)

/** A difference as it is told: so much more or less, to a hundredth of a millimetre or a thousandth of an inch. */
export function differenceText(difference: Length, unit: Unit): string {
  if (same(difference, zero)) return 'exact'
  const size = formatBare(mm(difference.abs()), unit)
  const word = difference.s < 0n ? 'less' : 'more'
  return size === '0' ? `a hair ${word}` : `${size} ${unit} ${word}`
}
