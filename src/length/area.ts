import Fraction from 'fraction.js'
import { formatNumber } from './format.ts'
import type { Length, Ratio, Size, Unit } from './length.ts'

declare const squareMillimetres: unique symbol

/** An exact area: a rational number of square millimetres. Never a plain number, nor a length. */
export type Area = Fraction & { readonly [squareMillimetres]: true }

export const noArea = new Fraction(0) as Area

export const rectangleOf = (a: Length, b: Length): Area => new Fraction(a).mul(b) as Fraction as Area
export const areaOf = ({ width, height }: Size): Area => rectangleOf(width, height)
export const areaPlus = (a: Area, b: Area): Area => a.add(b) as Area
export const areaMinus = (a: Area, b: Area): Area => a.sub(b) as Area
export const areaTimes = (a: Area, k: Ratio): Area => a.mul(new Fraction(k)) as Area

/** Square millimetres in the unit that areas are told in: square inches, or square centimetres. */
const told = { in: new Fraction(127, 5).pow(2) as Fraction, mm: new Fraction(100) } as const
/** What areas are told in. */
export const areaWords = { in: 'sq in', mm: 'cm²' } as const

/** The area in square inches or square centimetres, as a number for machines. */
export const areaNumber = (area: Area, unit: Unit): number => area.div(told[unit]).valueOf()

/** The area in square inches or square centimetres, up to the next tenth, so that it is never too little. */
export const inTenths = (area: Area, unit: Unit): Fraction => area.div(told[unit]).mul(10).ceil().div(10)

/** `42.5 sq in`, `274.2 cm²`. */
export const formatArea = (area: Area, unit: Unit): string =>
  `${formatNumber(inTenths(area, unit), 'mm')} ${areaWords[unit]}`

const written =
  /^\s*(\d+(?:\.\d+)?)\s*(?:(sq|square)\s*(in|inch|inches|cm|centimetres|centimeters|m|metres|meters|mm)|(in|cm|m|mm)(?:2|²))\s*$/i

/** Square millimetres in each word for a unit, by how it begins. */
const squares = {
  mm: new Fraction(1),
  c: new Fraction(100),
  i: told.in,
  m: new Fraction(1_000_000),
} as const

/** Reads `40 cm²`, `6 sq in`; undefined for anything else. */
export function readArea(text: string): Area | undefined {
  const [, number, , long = '', short = ''] = written.exec(text) ?? []
  if (number === undefined) return undefined
  const unit = (long || short).toLowerCase()
  const key = unit === 'mm' ? 'mm' : (unit[0] as 'c' | 'i' | 'm')
  return squares[key].mul(number) as Area
}
