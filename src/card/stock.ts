import Fraction from 'fraction.js'
import { inches, type Length, shorter, zero } from '../length/length.ts'
import { caliperOf, printedCaliper, usualBulk } from './caliper.ts'
import { attempt, lengthCell, type Reading, report, say, textOf, unlessBroken } from './reading.ts'
import type { Stock } from './structure.ts'
import { gramsPerSquareMetre } from './weight.ts'
import type { Entry, Field, Fields } from './yaml.ts'

/** The keys that say what something is made of. */
export const stockKeys = ['stock', 'weight', 'bulk', 'caliper', 'direction'] as const

/**
 * What a stock weighs in g/m², and its bulk in cm³/g, when the lesson does not say, by a word of its name in any of the
 * languages. From memory; film is 0.25 mm of polyester, the thickest that windows are cut from.
 */
const usualStocks: readonly (readonly [word: RegExp, gsm: number, bulk: Fraction])[] = [
  [/ac[eé]tat|azetat|film|folie|rhodo[iï]d/i, 350, new Fraction(5, 7)],
  [/vellum|transparentpapier|pergament|papier calque|papel vegetal/i, 110, usualBulk],
  [/board|pappe|carton (?:gris|bois)$|cartón/i, 600, usualBulk],
  [/card|karton|carton|cartulina/i, 250, usualBulk],
]

function usualOf(name: string): { gsm: Fraction; bulk: Fraction } {
  const [, gsm, bulk] = usualStocks.find(([word]) => word.test(name)) ?? [/./, 120, usualBulk]
  return { gsm: new Fraction(gsm), bulk }
}

/** What a stock of this name weighs when the lesson does not say, in g/m². */
export const usualGrams = (name: string): number => usualOf(name).gsm.valueOf()

/** Reads what a part of the card is made of. A stock's caliper need be given once only, wherever it is used. */
export function stockReader(reading: Reading, top: Fields): (fields: Fields, usualName: string) => Stock {
  const calipers = new Map<string, Length>()
  const own = new Map<Fields, Length>()
  const weights = new Map<string, Fraction>()
  for (const fields of groupsIn(top)) {
    const name = nameOf(fields)
    const weight = weightIn(reading, fields)
    if (weight && name !== undefined) weights.set(name, weight)
    const caliper = caliperIn(reading, fields, name ?? '', weight)
    if (caliper) own.set(fields, caliper)
    if (name !== undefined && caliper) calipers.set(name, caliper)
  }
  return (fields, usualName) => {
    const name = nameOf(fields) ?? usualName
    const { gsm, bulk } = usualOf(name)
    const caliper = own.get(fields) ?? calipers.get(name) ?? caliperOf(gsm, bulk)
    const said = weights.get(name)
    return { name, caliper, ...(said && { gsm: said }), ...directionIn(reading, fields) }
  }
}

function nameOf(fields: Fields): string | undefined {
  const entry = fields.get('stock')?.value
  return entry?.kind === 'text' ? entry.text.trim() : undefined
}

/** What a group says of its sheet: the caliper, or weight and bulk, of which the usual one stands in for the other. */
function caliperIn(
  reading: Reading,
  fields: Fields,
  name: string,
  weight: Fraction | undefined,
): Length | undefined {
  const given = fields.get('caliper')
  if (given) return givenCaliper(reading, given)
  const usual = usualOf(name)
  const bulk = bulkIn(reading, fields)
  return weight || bulk ? caliperOf(weight ?? usual.gsm, bulk ?? usual.bulk) : undefined
}

/** Thicker than this no sheet is scored or stuck on. Common practice, no source. */
const thickest = inches(1, 2)

function givenCaliper(reading: Reading, { keyPlace, value }: Field): Length | undefined {
  const printed = value.kind === 'text' ? printedCaliper(value.text) : undefined
  const caliper =
    printed ?? unlessBroken(lengthCell(reading, `caliper at line ${keyPlace.line}`, value, '0', 'exact'))
  if (!caliper || !(shorter(caliper, zero) || shorter(thickest, caliper))) return caliper
  report(
    reading,
    'value',
    value.place,
    `No sheet is ${say(reading, caliper)} thick`,
    'Give the thickness of one sheet, such as `caliper: 0.3 mm` or `caliper: 14 pt`',
  )
  return undefined
}

function weightIn(reading: Reading, fields: Fields): Fraction | undefined {
  const weight = fields.get('weight')
  const text =
    weight && textOf(reading, weight.value, 'A weight is wanted', 'Write `300 gsm` or `110 lb cover`')
  return text && attempt(reading, text, gramsPerSquareMetre)
}

/** Bulk in cm³/g. Between metal foil and blotting paper. Common practice, no source. */
function bulkIn(reading: Reading, fields: Fields): Fraction | undefined {
  const field = fields.get('bulk')
  if (!field) return undefined
  const text = field.value.kind === 'text' ? /^\s*(\d+(?:\.\d+)?)\s*$/.exec(field.value.text)?.[1] : undefined
  const bulk = new Fraction(text ?? 0)
  if (bulk.gte(0.3) && bulk.lte(5)) return bulk
  report(
    reading,
    'value',
    field.value.place,
    'A bulk is a plain number of cubic centimetres to a gram, from 0.3 to 5',
    'Write what the maker gives, such as `bulk: 1.3`',
  )
  return undefined
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
