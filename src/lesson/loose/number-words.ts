import Fraction from 'fraction.js'

const wholes =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen'.split(
    ' ',
  )
const parts: Readonly<Record<string, number>> = {
  half: 2,
  halves: 2,
  third: 3,
  quarter: 4,
  eighth: 8,
  sixteenth: 16,
}

const whole = `(?:${wholes.slice(1).join('|')})`
const part = '(?:half|halves|(?:third|quarter|eighth|sixteenth)s?)'
/** `a half`, `three-quarters`, `an eighth`. */
export const partPattern = `(?:(?:an?|${whole})[ -])?${part}`
/** `two`, `eight and a half`, `three quarters`, `half`. */
export const wordAmountPattern = `(?:${partPattern}|(?:${whole}|an?)(?: and ${partPattern})?)`

const tens: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  ninety: 90,
}
/** The same, and numbers that lengths in words are too long for: `forty-five`. */
export const longAmountPattern = `(?:(?:${Object.keys(tens).join('|')})(?:[ -]${whole})?|${wordAmountPattern})`

/**
 * The number that a few words say: `eight and a half`, `three-quarters`, `an`, `half`.
 *
 * @returns undefined when they say none.
 */
export function numberInWords(words: string): { value: Fraction; denominator: number } | undefined {
  let value = new Fraction(0)
  let denominator = 1
  let count: number | undefined
  for (const word of words.toLowerCase().split(/[ -]+/)) {
    const below = parts[word] ?? parts[word.replace(/s$/, '')]
    const n = word === 'a' || word === 'an' ? 1 : (tens[word] ?? wholes.indexOf(word))
    if (word === 'and') {
      value = value.add(count ?? 0)
      count = undefined
    } else if (below !== undefined) {
      value = value.add(new Fraction(count ?? 1, below))
      denominator = below
      count = undefined
    } else if (n > 0) count = (count ?? 0) >= 20 && n < 10 ? (count ?? 0) + n : n
    else return undefined
  }
  value = value.add(count ?? 0)
  return value.n > 0n ? { value, denominator } : undefined
}
