import Fraction from 'fraction.js'

/** How much of something that is weighed or poured: so many grams, or so many millilitres, exactly. */
export interface Dose {
  readonly unit: 'g' | 'ml'
  readonly amount: Fraction
}

/** The words for units, with how many grams or millilitres each has. */
const units: Readonly<Record<string, readonly [unit: Dose['unit'], of: number]>> = {
  g: ['g', 1],
  gram: ['g', 1],
  gramme: ['g', 1],
  kg: ['g', 1000],
  ml: ['ml', 1],
  millilitre: ['ml', 1],
  milliliter: ['ml', 1],
  cl: ['ml', 10],
  l: ['ml', 1000],
  litre: ['ml', 1000],
  liter: ['ml', 1000],
}

const written = new RegExp(`^\\s*(\\d{1,6}(?:\\.\\d{1,4})?)\\s*(${Object.keys(units).join('|')})s?\\s*$`, 'i')

/** Reads `5 g`, `2.5 ml`, `1 kg`; undefined for anything else. */
export function readDose(text: string): Dose | undefined {
  const [, number, word = ''] = written.exec(text) ?? []
  const known = units[word.toLowerCase()]
  if (number === undefined || !known) return undefined
  const [unit, of] = known
  return { unit, amount: new Fraction(number).mul(of) }
}

/** A dose as it is told: from a thousand on in the larger unit when a decimal says it exactly. */
export function toldDose({ unit, amount }: Dose): { readonly number: Fraction; readonly unit: string } {
  const thousands = amount.div(1000)
  const plain = thousands.gte(1) && thousands.mul(1000).d === 1n
  return plain ? { number: thousands, unit: unit === 'g' ? 'kg' : 'l' } : { number: amount, unit }
}
