import Fraction from 'fraction.js'
import { type Length, mm } from '../length/length.ts'
import { attempt, lengthCell, type Reading, report, textOf, unlessBroken } from './reading.ts'
import type { Stock } from './structure.ts'
import { gramsPerSquareMetre } from './weight.ts'
import type { Entry, Field, Fields } from './yaml.ts'

/** The keys that say what something is made of. */
export const stockKeys = ['stock', 'weight', 'caliper', 'direction'] as const

/** Cubic centimetres to a gram of ordinary uncoated card. From memory; a lesson may give the caliper instead. */
const usualBulk = new Fraction(5, 4)

/** Caliper of a sheet from its weight: grams per square metre times bulk (ISO 534). */
export const caliperOf = (gsm: Fraction, bulk = usualBulk): Length => mm(gsm.mul(bulk).div(1000))

/** What a stock weighs when the lesson does not say, by a word of its name. From memory. */
const usualWeights: readonly (readonly [RegExp, number])[] = [
  [/acetate|film/i, 230],
  [/vellum/i, 110],
  [/board/i, 600],
  [/card/i, 250],
  [/./, 120],
]

/** Reads what a part of the card is made of. A stock's caliper need be given once only, wherever it is used. */
export function stockReader(reading: Reading, top: Fields): (fields: Fields, usualName: string) => Stock {
  const calipers = new Map<string, Length>()
  for (const fields of groupsIn(top)) {
    const name = nameOf(fields)
    const caliper = caliperIn(reading, fields)
    if (name !== undefined && caliper) calipers.set(name, caliper)
  }
  return (fields, usualName) => {
    const name = nameOf(fields) ?? usualName
    const caliper =
      calipers.get(name) ??
      caliperOf(new Fraction(usualWeights.find(([word]) => word.test(name))?.[1] ?? 120))
    return { name, caliper, ...directionIn(reading, fields) }
  }
}

function nameOf(fields: Fields): string | undefined {
  const entry = fields.get('stock')?.value
  return entry?.kind === 'text' ? entry.text.trim() : undefined
}

function caliperIn(reading: Reading, fields: Fields): Length | undefined {
  const given = fields.get('caliper')
  if (given)
    return unlessBroken(
      lengthCell(reading, `caliper at line ${given.keyPlace.line}`, given.value, '0', 'exact'),
    )
  const weight = fields.get('weight')
  if (!weight) return undefined
  const text = textOf(reading, weight.value, 'A weight is wanted', 'Write `300 gsm` or `110 lb cover`')
  const gsm = text && attempt(reading, text, gramsPerSquareMetre)
  return gsm && caliperOf(gsm)
}

function directionIn(reading: Reading, fields: Fields): { direction: 'upright' } | object {
  const field: Field | undefined = fields.get('direction')
  if (!field) return {}
  if (field.value.kind === 'text' && field.value.text === 'upright') return { direction: 'upright' }
  report(
    reading,
    'value',
    field.value.place,
    'The only direction is `upright`',
    'Write `direction: upright`, or leave it out',
  )
  return {}
}

/** All mappings in the block, at any depth, in order. */
function groupsIn(fields: Fields): Fields[] {
  const inside = (entry: Entry): Fields[] =>
    entry.kind === 'map' ? groupsIn(entry.fields) : entry.kind === 'list' ? entry.items.flatMap(inside) : []
  return [fields, ...[...fields.values()].flatMap((field) => inside(field.value))]
}
