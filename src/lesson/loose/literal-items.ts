import { type Length, mm, unitLength } from '../../length/length.ts'
import type { UnitName } from '../../length/tokens.ts'
import { latin } from '../prose/latin.ts'
import { type Amount, amountAt } from './amount.ts'
import { numberInWords, partPattern } from './number-words.ts'
import { unitAt } from './unit-at.ts'

/** One number of a measure, with its unit or before it is known. */
export interface Item {
  readonly amount: Amount
  readonly unit?: UnitName
  readonly start: number
  readonly end: number
  /** What is added to it: the `5 mm` of `1 cm 5 mm`, the half of `an inch and a half`. */
  readonly more?: Length
}

/** What may stand between two numbers of one measure. */
export type Joint = 'size' | 'list' | 'range'

const joints: readonly (readonly [RegExp, Joint])[] = [
  [/ ?[x×✕] ?(?=[\d.¼½¾⅐-⅞])| by (?=[a-z\d.¼½¾⅐-⅞])/iy, 'size'],
  [/,? (?:and|or|&) |, /iy, 'list'],
  [/ to | ?[–—] ?|-(?=\d)/iy, 'range'],
]

/** The number that starts at `start`, with its unit if it has one; `joint` is what stands before it. */
export function itemAt(text: string, start: number, joint?: Joint): Item | undefined {
  const amount = amountAt(text, start, joint !== undefined)
  if (!amount) return undefined
  const unit = unitAt(text, start, amount, joint === 'size')
  if (!unit) {
    // `1,2` is one and two tenths only before a metric unit; bare words are an amount only with their own unit.
    return amount.written === 'words' && /^an?\b/i.test(text.slice(start))
      ? undefined
      : { amount, start, end: amount.end }
  }
  if (amount.comma && (unit.unit === 'in' || unit.unit === 'ft')) return undefined
  const item = { amount, unit: unit.unit, start, end: unit.end }
  return { ...item, ...addedTo(text, item) }
}

const smaller: Partial<Record<UnitName, UnitName>> = { ft: 'in', m: 'cm', cm: 'mm' }
const half = new RegExp(
  ` and (${partPattern})(?![${latin}\\d-]| (?:an? |of an? )?(?:inch|mm|cm|centi|milli))`,
  'iy',
)

/** `1 cm 5 mm`, `1 ft 6 in`, `an inch and a half`. */
function addedTo(
  text: string,
  { amount, unit, end }: Item & { unit: UnitName },
): { more: Length; end: number } | object {
  half.lastIndex = end
  const words = amount.written === 'broken' ? undefined : half.exec(text)
  const part = words?.[1] === undefined ? undefined : numberInWords(words[1])
  if (words && part) return { more: mm(part.value.mul(unitLength[unit])), end: end + words[0].length }
  const space = /^ (?=\d)/.exec(text.slice(end))
  const below = space && amountAt(text, end + 1)
  const belowUnit = below && unitAt(text, end + 1, below)
  if (!below || !belowUnit || belowUnit.unit !== smaller[unit]) return {}
  return { more: mm(below.value.mul(unitLength[belowUnit.unit])), end: belowUnit.end }
}

/** The number that is joined on at `at`. */
export function nextItem(text: string, at: number): { item: Item; joint: Joint } | undefined {
  for (const [pattern, joint] of joints) {
    pattern.lastIndex = at
    const between = pattern.exec(text)?.[0]
    const item = between === undefined ? undefined : itemAt(text, at + between.length, joint)
    if (item) return { item, joint }
  }
  return undefined
}
