import Fraction from 'fraction.js'
import { ExpressionError } from '../length/expression.ts'

/** Grams in a pound, exactly (1959 international agreement). */
const grams = new Fraction(45359237, 100000)
/** Square metres in a square inch, exactly. */
const squareInch = new Fraction(64516, 100000000)

/** Basis sizes in square inches: pounds are the weight of 500 sheets of that size. US trade, as paper makers publish them. */
const bond = new Fraction(17 * 22)
const text = new Fraction(25 * 38)
const cover = new Fraction(20 * 26)
const index = new Fraction(51, 2).mul(61, 2)
const tag = new Fraction(24 * 36)
const bristol = new Fraction(45, 2).mul(57, 2)

/** Grades that are sold by the same basis size go by several names. */
const basis: Readonly<Record<string, Fraction>> = {
  bond,
  writing: bond,
  ledger: bond,
  text,
  book: text,
  offset: text,
  cover,
  index,
  tag,
  newsprint: tag,
  bristol,
}

const inPounds = new RegExp(
  `^\\s*(\\d+(?:\\.\\d+)?)\\s*(?:lb|lbs|#)\\s*(${Object.keys(basis).join('|')})\\s*$`,
  'i',
)

/**
 * Reads the weight of a sheet: `300 gsm`, `300 g/m²`, `110 lb cover`.
 *
 * gsm = lb × 453.59237 / (500 × A × 0.00064516), A the basis size in square inches.
 *
 * @returns grams per square metre.
 * @throws ExpressionError for anything else.
 */
export function gramsPerSquareMetre(text: string): Fraction {
  const gsm = weightIn(text)
  if (gsm?.lte(heaviest)) return gsm
  throw new ExpressionError(
    'weight',
    gsm ? `No sheet is as heavy as \`${text.trim()}\`` : `Unexpected weight \`${text.trim()}\``,
    { start: 0, end: text.length },
    'Write `300 gsm`, or pounds with their grade such as `110 lb cover`; the grades are bond, text, cover, index, tag and bristol',
  )
}

/** Heavier than any board that folds. */
const heaviest = 5000

function weightIn(written: string): Fraction | undefined {
  const metric = /^\s*(\d+(?:\.\d+)?)\s*(?:gsm|g\/m2|g\/m²|g)\s*$/i.exec(written)
  if (metric?.[1]) return new Fraction(metric[1])
  const pounds = inPounds.exec(written)
  const area = pounds?.[2] && basis[pounds[2].toLowerCase()]
  return pounds?.[1] && area
    ? new Fraction(pounds[1]).mul(grams).div(area.mul(500).mul(squareInch))
    : undefined
}
