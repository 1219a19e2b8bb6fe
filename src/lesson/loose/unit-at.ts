import type { UnitName } from '../../length/tokens.ts'
import { latin } from '../prose/latin.ts'
import type { Amount } from './amount.ts'

/** A unit behind a number. */
export interface UnitFound {
  readonly unit: UnitName
  readonly end: number
}

const gap = '[ \\u00a0\\u2009\\u202f]?'
const long: readonly (readonly [RegExp, UnitName])[] = [
  [/inch(?:es)?/iy, 'in'],
  [/(?:mm|millimet(?:re|er)s?)/iy, 'mm'],
  [/(?:cm|centimet(?:re|er)s?)/iy, 'cm'],
  [/(?:m|met(?:re|er)s?)/y, 'm'],
  [/(?:ft|foot|feet)/iy, 'ft'],
]
const between = new RegExp(`${gap}-?`, 'y')
const ofAn = / of an? (?=inch|foot|centi|milli)/iy
const betweenWords = / (?:of an? |an? )?|-/y
const mark = new RegExp(`${gap}(?:["″”]|'')`, 'y')

/** What an `in` behind a whole number is a word before: "cut 2 in the same way", "3 in a row", "4 in blue card". */
const placeWords = new RegExp(
  `^\\s+(?:${[
    'an?|the|this|that|these|those|each|every|any|all|both|one|two|three|it|them|its|my|your|our|their|his|her|which|what',
    'total|turn|place|position|order|pairs?|rows?|lines?|half|halves|halfway|front|between|advance|sequence|succession|reverse',
    'use|sight|reach|groups?|class|hand|case|step|stages?|reserve|stock|parallel|advance|addition|different|other|another|several|some|most',
    'minutes|seconds|hours|colou?rs?|shades?|black|white|grey|gray|blue|red|green|yellow|brown|orange|purple|pink|navy|cream|gold|silver|dark|light|pale',
    'card|cardstock|paper|vellum|felt|foil|kraft|tissue|acetate|tracing|pencil|ink|pen|glue|January|February|March|April|May|June|July|August|September|October|November|December',
  ].join('|')})(?![${latin}])`,
  'i',
)
/** What makes a number the name of something rather than an amount. */
const numbered =
  /\b(?:steps?|figs?|figures?|pages?|panels?|rows?|nos?|numbers?|parts?|steps? \d+ (?:and|to|or)|lessons?)\.? $/i

/**
 * The unit behind an amount.
 *
 * @param start of the amount.
 * @param height whether it is the second of `12 x 12`, behind which an `in` can be nothing else.
 */
export function unitAt(text: string, start: number, amount: Amount, height = false): UnitFound | undefined {
  const { end, written } = amount
  if (written === 'words') return unitOfWords(text, start, end)
  mark.lastIndex = end
  const sign = mark.exec(text)?.[0]
  if (sign !== undefined)
    return closesQuotation(text, start, sign) ? undefined : { unit: 'in', end: end + sign.length }
  between.lastIndex = end
  ofAn.lastIndex = end
  const ofOne = written === 'broken' ? ofAn.exec(text) : null
  const at = end + ((ofOne ?? between.exec(text))?.[0].length ?? 0)
  return longUnit(text, at) ?? shortInch(text, start, at, height ? undefined : amount)
}

function longUnit(text: string, at: number): UnitFound | undefined {
  for (const [pattern, unit] of long) {
    pattern.lastIndex = at
    const found = pattern.exec(text)?.[0]
    if (found !== undefined && !/^[\p{L}\p{N}²³]/u.test(text.slice(at + found.length)))
      return { unit, end: at + found.length }
  }
  return undefined
}

function shortInch(text: string, start: number, at: number, amount?: Amount): UnitFound | undefined {
  if (!/^in(?![\p{L}\p{N}'’])/iu.test(text.slice(at, at + 3))) return undefined
  const end = at + 2
  const rest = text.slice(end)
  const glued = !/\s/.test(text.slice(at - 1, at))
  if (amount && !glued && /^ \p{Lu}/u.test(rest)) return undefined
  if (amount?.written === 'whole' && !glued) {
    const before = text.slice(Math.max(0, start - 24), start)
    if (placeWords.test(rest) || numbered.test(before) || amount.value.gte(100)) return undefined
  }
  // `6 in. wide`: the full stop belongs to the unit.
  return { unit: 'in', end: /^\. +[\p{Ll}]/u.test(rest) ? end + 1 : end }
}

/** `half an inch`, `two inches`, `quarter-inch`, but not "the foot of the easel" or "a foot", which is a panel. */
function unitOfWords(text: string, start: number, end: number): UnitFound | undefined {
  betweenWords.lastIndex = end
  const joined = betweenWords.exec(text)?.[0]
  const said = text.slice(start, end)
  if (joined === undefined) return undefined
  // "two of a foot" is nothing, and "half an inch" needs its fraction.
  if (/an?/.test(joined) && !/hal|third|quarter|eighth|sixteenth/i.test(said)) return undefined
  const found = longUnit(text, end + joined.length)
  if (!found || /^(?:m|mm|cm|ft)$/i.test(text.slice(end + joined.length, found.end))) return undefined
  return found.unit === 'ft' && /^an?$/i.test(said) ? undefined : found
}

/** Whether a `"` ends words in quotation marks that started before the number. */
function closesQuotation(text: string, start: number, sign: string): boolean {
  const before = text.slice(0, start)
  const kind = sign.trim()
  if (kind === '”') return before.lastIndexOf('“') > before.lastIndexOf('”')
  if (kind !== '"') return false
  const opened = [...before.matchAll(/(?<=^|[\s([])"(?=\S)/g)].at(-1)
  return opened !== undefined && !/\S"/.test(before.slice(opened.index + 1))
}
