import Fraction from 'fraction.js'
import { latin } from '../prose/latin.ts'
import { numberInWords, partPattern, wordAmountPattern } from './number-words.ts'

/** A number as it stands in words, before its unit. */
export interface Amount {
  readonly value: Fraction
  /** One over this is what the last place of it stands for: 8 for `5 7/8`, 10 for `14.9`. */
  readonly denominator: number
  readonly end: number
  /** In letters, or with a fraction or a decimal point: nobody counts things with these. */
  readonly written: 'whole' | 'broken' | 'words'
  /** A comma stood where a point may be meant. */
  readonly comma?: boolean
}

const gap = '[ \\u00a0\\u2009\\u202f]'
const sign = '[¼½¾⅐-⅞]'
const broken = new RegExp(
  `(?:(\\d{1,4})(?:${gap}+(?:and${gap}+)?|-|${gap}*(?=${sign})))?(?:(\\d{1,2})[/⁄](\\d{1,2})(?![/\\d])|(${sign}))`,
  'uy',
)
const decimal = /(\d{1,5})?\.(\d{1,4})(?![\d.])|(\d{1,4}),(\d{1,2})(?![\d,])/y
const whole = new RegExp(`(\\d{1,5})(?:${gap}and${gap}(${partPattern}))?(?![\\d:]|[.,/]\\d)`, 'iy')
const words = new RegExp(`${wordAmountPattern}(?![${latin}\\d])`, 'iy')

/**
 * The number that starts at `at`, if one does. It must not be the end of another one, of a word, a time or a date.
 *
 * @param joined whether what stands before it has been read as a part of the same measure.
 */
export function amountAt(text: string, at: number, joined = false): Amount | undefined {
  if (!joined && /[\p{L}\p{N}_/:£$€#@]$|\d[.,]$|[\p{N}\p{L}]-$/u.test(text.slice(Math.max(0, at - 2), at)))
    return undefined
  return numeralAt(text, at) ?? wordsAt(text, at)
}

function numeralAt(text: string, at: number): Amount | undefined {
  const match = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at
    return pattern.exec(text)
  }
  const fraction = match(broken)
  if (fraction) {
    const [found, before, top, bottom, one] = fraction
    const [n = '0', d = '1'] = one ? one.normalize('NFKC').split('⁄') : [top, bottom]
    if (Number(d) === 0) return undefined
    const value = new Fraction(before ?? 0).add(new Fraction(Number(n), Number(d)))
    return { value, denominator: Number(d), end: at + found.length, written: 'broken' }
  }
  const point = match(decimal)
  if (point) {
    const [found, int = '0', places, intBefore, placesBehind] = point
    const digits = places ?? placesBehind ?? ''
    const value = new Fraction(`${intBefore ?? int}.${digits}`)
    const comma = intBefore !== undefined
    return {
      value,
      denominator: 10 ** digits.length,
      end: at + found.length,
      written: 'broken',
      ...(comma && { comma }),
    }
  }
  const count = match(whole)
  if (!count) return undefined
  const [found, int = '0', part] = count
  const more = part === undefined ? undefined : numberInWords(part)
  return {
    value: new Fraction(int).add(more?.value ?? 0),
    denominator: more?.denominator ?? 1,
    end: at + found.length,
    written: more ? 'broken' : 'whole',
  }
}

function wordsAt(text: string, at: number): Amount | undefined {
  words.lastIndex = at
  const found = words.exec(text)?.[0]
  const number = found === undefined ? undefined : numberInWords(found)
  return found !== undefined && number ? { ...number, end: at + found.length, written: 'words' } : undefined
}
