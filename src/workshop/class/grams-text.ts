import Fraction from 'fraction.js'
import { formatNumber } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'

/** Grams in a pound, exactly (1959 international agreement). */
const pound = new Fraction(45359237, 100000)

/** `43 g`, `1.24 kg`; beside inches also `1.5 oz`, `2.7 lb`. Rounded to what a kitchen scale shows. */
export function gramsText(grams: Fraction, unit: Unit): string {
  const metric = grams.lt(1000)
    ? `${decimal(grams, grams.lt(10) ? 1 : 0)} g`
    : `${decimal(grams.div(1000), 2)} kg`
  if (unit === 'mm') return metric
  const pounds = grams.div(pound)
  return `${metric} (${pounds.lt(1) ? `${decimal(pounds.mul(16), 1)} oz` : `${decimal(pounds, 1)} lb`})`
}

const decimal = (x: Fraction, places: number): string => formatNumber(x.round(places), 'mm')
