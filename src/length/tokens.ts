import Fraction from 'fraction.js'
import type { unitLength } from './length.ts'

export type UnitName = keyof typeof unitLength

/** One word of an expression, with where it starts and ends in the text. */
export type Token = { readonly start: number; readonly end: number } & (
  | { readonly kind: 'number'; readonly value: Fraction }
  | { readonly kind: 'unit'; readonly unit: UnitName }
  | { readonly kind: 'name'; readonly text: string }
  | { readonly kind: 'sign'; readonly text: '+' | '-' | '*' | '/' | '(' | ')' | '.' | 'x' | 'as' | ',' }
  | { readonly kind: 'unknown'; readonly text: string }
  | { readonly kind: 'end' }
)

const units: Record<string, UnitName> = {
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  "''": 'in',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
}

const space = /[\s\u00a0\u202f\u2009]*/y
/** `5 7/8`, `5-7/8`, `5⅞`, `7/8`, `⅞`, `14.9`, `.5`; a fraction has no spaces round its slash. */
const number =
  /(?:(\d+)(?:[\s\u00a0\u202f\u2009]+|-))?(\d+)[/⁄](\d+)|(\d+)?[\s\u00a0\u202f\u2009]?([¼½¾⅐-⅞])|(\d+(?:\.\d+)?|\.\d+)/uy
/** A unit may stand right behind its number: `5in`, `5"`. */
const unit = /["″”]|''|\p{L}+(?![\p{L}\p{N}])/uy
/** A name may have several words: `sea wall`, `panel 2`. A hyphen inside a word belongs to the name. */
const word = /\p{L}[\p{L}\p{M}\p{N}_'’]*(?:-\p{L}[\p{L}\p{M}\p{N}_'’]*)*/uy
const nextWord =
  /[ \t]+(?:\p{L}[\p{L}\p{M}\p{N}_'’]*(?:-\p{L}[\p{L}\p{M}\p{N}_'’]*)*|\d+(?!\d|\.\d|[/⁄]|\s*["″”\p{L}]))/uy
const sign = /[-+*/().,×−·]/uy
const reserved = new Set(['x', 'as'])

/** Splits the text of an expression into tokens; the last one is always `end`. Never throws. */
export function tokens(text: string): Token[] {
  const list: Token[] = []
  let at = 0
  const match = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at
    return pattern.exec(text)
  }
  for (;;) {
    at += match(space)?.[0].length ?? 0
    if (at >= text.length) break
    const start = at
    const before = list.at(-1)
    const push = (length: number, token: object) => {
      at = start + length
      list.push({ start, end: at, ...token } as Token)
    }
    const asUnit = before?.kind === 'number' ? match(unit) : null
    if (asUnit && units[asUnit[0].toLowerCase()]) {
      push(asUnit[0].length, { kind: 'unit', unit: units[asUnit[0].toLowerCase()] })
      continue
    }
    // `8x6` and `8 x 6`: after a number an x is the sign between width and height.
    if (/^[x×](?=[\s\d.¼½¾⅐-⅞(])/iu.test(text.slice(at, at + 2))) {
      push(1, { kind: 'sign', text: 'x' })
      continue
    }
    // Right behind a name a dot asks for a part of it; elsewhere it may begin a number, such as `.5`.
    if (text[at] === '.' && before?.kind === 'name' && before.end === at) {
      push(1, { kind: 'sign', text: '.' })
      continue
    }
    const isPart = before?.kind === 'sign' && before.text === '.'
    const aNumber = isPart ? /\d+/y : number
    const digits = match(aNumber)
    if (digits) {
      push(digits[0].length, { kind: 'number', value: isPart ? new Fraction(digits[0]) : numberOf(digits) })
      continue
    }
    if (match(word)) {
      const name = wholeName(text, at)
      // An accent may be a character of its own, as in texts that are copied from a Mac.
      const text_ = name.replace(/\s+/g, ' ').normalize('NFC')
      push(name.length, reserved.has(text_) ? { kind: 'sign', text: text_ } : { kind: 'name', text: text_ })
      continue
    }
    const mark = match(sign)
    if (mark) push(1, { kind: 'sign', text: { '×': 'x', '−': '-', '·': '*' }[mark[0]] ?? mark[0] })
    else push(1, { kind: 'unknown', text: text[at] })
  }
  list.push({ kind: 'end', start: text.length, end: text.length })
  return list
}

/** The words of a name from `start` on, up to a reserved word or anything that is not a word. */
function wholeName(text: string, start: number): string {
  word.lastIndex = start
  let end = start + (word.exec(text)?.[0].length ?? 0)
  if (reserved.has(text.slice(start, end))) return text.slice(start, end)
  for (;;) {
    nextWord.lastIndex = end
    const next = nextWord.exec(text)?.[0]
    if (next === undefined || reserved.has(next.trim())) return text.slice(start, end)
    end += next.length
  }
}

function numberOf([, whole, top, bottom, wholeBefore, single, decimal]: RegExpExecArray): Fraction {
  if (decimal !== undefined) return new Fraction(decimal)
  if (single !== undefined) {
    const [n = '0', d = '1'] = single.normalize('NFKC').split('⁄')
    return fraction(wholeBefore, n, d)
  }
  return fraction(whole, top ?? '0', bottom ?? '1')
}

/** A fraction over zero is given as zero here; the parser says so with its place. */
function fraction(whole: string | undefined, top: string, bottom: string): Fraction {
  const base = new Fraction(whole ?? 0)
  return /^0+$/.test(bottom) ? base : base.add(new Fraction(BigInt(top), BigInt(bottom)))
}
