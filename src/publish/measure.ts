import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import { onceFor } from '../length/once.ts'
import { inLearnt } from '../wording/catalogue.ts'

/** Between a whole number and its fraction: a space that is narrow, and that no line breaks at. */
const narrow = '\u202f'
/** Between a number and its unit. */
const kept = '\u00a0'

/** A mixed number, a fraction by itself: `5 7/8`, `13/16`. */
const fraction = /(?:(\d+) )?\b(\d+\/\d+)\b/g

const behindNumber = onceFor((units: string) => new RegExp(`(\\d) (${units})(?!\\p{L})`, 'gu'))

/** A number before a unit of the languages that are learnt, or before one of time. */
function beforeUnit(): RegExp {
  const units = new Set([...inLearnt('measures.in'), ...inLearnt('measures.mm'), 'min', 'h'])
  return behindNumber([...units].join('|'))
}

/** A number stays with its unit, and width with height. */
const keepTogether = (text: string): string =>
  text.replace(/ × /g, `${kept}×${kept}`).replace(beforeUnit(), `$1${kept}$2`)

/**
 * A measure as it is set: fractions in spans that the fonts turn into real ones, so that whoever copies, searches or
 * listens still gets `5 7/8`.
 *
 * @param text such as `5 7/8 × 4 in`, or a text without any number, which stays as it is.
 */
export function measureHast(text: string): ElementContent[] {
  const parts: ElementContent[] = []
  let end = 0
  const add = (value: string): void => {
    if (value !== '') parts.push({ type: 'text', value })
  }
  // Kept spaces are put in first: a fraction's own space is still a plain one then.
  const joined = keepTogether(text)
  for (const found of joined.matchAll(fraction)) {
    const [all, whole, part = ''] = found
    add(joined.slice(end, found.index) + (whole === undefined ? '' : whole + narrow))
    parts.push(h('span', { className: ['frac'] }, part))
    end = found.index + all.length
  }
  add(joined.slice(end))
  return parts
}

/** The same for a place that takes text only, such as the foot of a page: U+2044 is what fonts make fractions of. */
export const measureText = (text: string): string =>
  keepTogether(text).replace(fraction, (_, whole: string | undefined, part: string) => {
    return (whole === undefined ? '' : whole + narrow) + part.replace('/', '\u2044')
  })

/** A measure in running text: set apart, if there is a number in it. */
export const measureSpan = (text: string): ElementContent[] =>
  /\d/.test(text)
    ? [h('span', { className: ['measure'] }, measureHast(text))]
    : [{ type: 'text', value: text }]
