import Fraction from 'fraction.js'
import { ExpressionError } from '../length/expression.ts'

/** Grams in a pound, exactly (1959 international agreement). */
const grams = new Fraction(45359237, 100000)
/** Square metres in a square inch, exactly. */
const squareInch = new Fraction(64516, 100000000)

/** Basis sizes in square inches: pounds are the weight of 500 sheets of that size. US trade, as paper makers publish them. */
const basis: Record<string, Fraction> = {
  bond: new Fraction(17 * 22),
  text: new Fraction(25 * 38),
  cover: new Fraction(20 * 26),
  index: new Fraction(51, 2).mul(61, 2),
}

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
    'Write `300 gsm`, or pounds with their grade such as `110 lb cover`; the grades are bond, text, cover and index',
  )
}

/** Heavier than any board that folds. */
const heaviest = 5000

function weightIn(text: string): Fraction | undefined {
  const metric = /^\s*(\d+(?:\.\d+)?)\s*(?:gsm|g\/m2|g\/m²|g)\s*$/i.exec(text)
  if (metric?.[1]) return new Fraction(metric[1])
  const pounds = /^\s*(\d+(?:\.\d+)?)\s*(?:lb|lbs|#)\s*(bond|text|cover|index)\s*$/i.exec(text)
  const area = pounds?.[2] && basis[pounds[2].toLowerCase()]
  return pounds?.[1] && area
    ? new Fraction(pounds[1]).mul(grams).div(area.mul(500).mul(squareInch))
    : undefined
}
