import Fraction from 'fraction.js'
import { checkKeys, fieldsOf, type Reading, report } from '../../card/reading.ts'
import type { Entry, Field, Fields } from '../../card/yaml.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import { countIn, moneyIn } from './amounts.ts'
import { feesWithoutName } from './fee-words.ts'
import type { Fee, PriceWish } from './price-wish.ts'

const keys = ['fees', 'each', 'margin', 'round to', 'paying'] as const
const example = 'Write for example `price: {fees: {room: 60, teaching: 120}, margin: 20 %, round to: 0.50}`'

/**
 * What a class is to cost: `price: {fees: {room: 60}, each: {tea: 1.50}, margin: 20 %, round to: 0.50, paying: 12}`.
 *
 * @param people who come; of them all pay unless the file says how many.
 */
export function priceIn(
  reading: Reading,
  field: Field | undefined,
  people: number | undefined,
): PriceWish | undefined {
  if (!field || field.value.kind === 'empty') return undefined
  const fields = fieldsOf(reading, field.value, '`price` wants what is paid and what is to be left', example)
  checkKeys(reading, withoutMarkup(reading, fields), keys, 'the price')
  const step = moneyIn(reading, fields.get('round to')?.value, 'round to')
  if (step?.equals(0))
    report(
      reading,
      'value',
      fields.get('round to')?.keyPlace ?? field.keyPlace,
      'A price cannot be rounded to nothing',
      'Write for example `round to: 0.50`',
    )
  return {
    place: field.keyPlace,
    fees: feesIn(reading, fields.get('fees')?.value, 'fees', feesWithoutName.fees),
    each: feesIn(reading, fields.get('each')?.value, 'each', feesWithoutName.each),
    margin: marginIn(reading, fields.get('margin')?.value),
    step: step?.gt(0) ? step : new Fraction(1, 100),
    paying: payingIn(reading, fields.get('paying'), people),
  }
}

/** `{room: 60, teaching: 120}`, or an amount alone. */
function feesIn(reading: Reading, entry: Entry | undefined, what: string, alone: string): Fee[] {
  if (entry?.kind === 'text') {
    const amount = moneyIn(reading, entry, what)
    return amount ? [{ name: alone, amount }] : []
  }
  const cure = `Write what for and how much, such as \`${what}: {${what === 'fees' ? 'room: 60' : 'tea: 1.50'}}\``
  return [...fieldsOf(reading, entry, `\`${what}\` wants what is paid for`, cure).values()].flatMap(
    ({ key, value }) => {
      const amount = moneyIn(reading, value, key)
      return amount ? [{ name: key, amount }] : []
    },
  )
}

const percent = /^\s*(\d{1,3}(?:\.\d{1,3})?)\s*%\s*$/

function marginIn(reading: Reading, entry: Entry | undefined): Fraction {
  const cure = 'Write the part of the price that is to be left, such as `margin: 20 %`'
  const [text] = textsOf(reading, entry, '`margin` wants so many per cent', cure)
  if (!text) return new Fraction(0)
  const [, number] = percent.exec(text.text) ?? []
  const margin = number === undefined ? undefined : new Fraction(number).div(100)
  if (margin?.lt(1)) return margin
  report(
    reading,
    'value',
    text.place,
    margin
      ? 'No price leaves so much: a margin is a part of the price'
      : `\`${text.text.trim()}\` is no margin`,
    cure,
  )
  return new Fraction(0)
}

/** Who asks for a markup is told the margin that is the same: of a cost c, c × (1 + m) leaves m / (1 + m) of itself. */
function withoutMarkup(reading: Reading, fields: Fields): Fields {
  const field = fields.get('markup')
  if (!field) return fields
  const [, number] = percent.exec(field.value.kind === 'text' ? field.value.text : '') ?? []
  const same = number === undefined ? undefined : new Fraction(number).div(new Fraction(number).add(100))
  report(
    reading,
    'unknown-key',
    field.keyPlace,
    'A price is set by its `margin`, the part of the price that is left when all is paid, and not by a markup on the cost',
    `Write \`margin: ${same ? same.mul(100).round(1).valueOf() : 20} %\`${same ? `, which comes to ${same.mul(1000).d === 1n ? '' : 'nearly '}the same` : ''}`,
  )
  return new Map([...fields].filter(([key]) => key !== 'markup'))
}

function payingIn(reading: Reading, field: Field | undefined, people: number | undefined): number {
  const paying = countIn(reading, field?.value, 'paying', 1)
  if (paying === undefined || people === undefined || paying <= people) return paying ?? people ?? 1
  report(
    reading,
    'value',
    field?.keyPlace ?? { line: 1, column: 1 },
    `${paying} pay, but only ${people} come`,
    `Write at most \`paying: ${people}\``,
  )
  return people
}
