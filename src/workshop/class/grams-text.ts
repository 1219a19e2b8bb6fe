import Fraction from 'fraction.js'
import type { Wording } from '../../wording/wording.ts'

/** Grams in a pound, exactly (1959 international agreement). */
const pound = new Fraction(45359237, 100000)

/** `43 g`, `1.24 kg`; beside inches also `1.5 oz`, `2.7 lb`. Rounded to what a kitchen scale shows. */
export function gramsText(grams: Fraction, wording: Wording): string {
  const decimal = (x: Fraction, places: number, unit: string): string =>
    wording.say('measures.with-unit', { number: wording.in('mm').number(x.round(places)), unit })
  const metric = grams.lt(1000)
    ? decimal(grams, grams.lt(10) ? 1 : 0, 'g')
    : decimal(grams.div(1000), 2, 'kg')
  if (wording.unit === 'mm') return metric
  const pounds = grams.div(pound)
  return `${metric} (${pounds.lt(1) ? decimal(pounds.mul(16), 1, 'oz') : decimal(pounds, 1, 'lb')})`
}
