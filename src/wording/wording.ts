import type Fraction from 'fraction.js'
import { formatBare, formatNumber } from '../length/format.ts'
import { isOnGrid } from '../length/grid.ts'
import { inches, type Length, type Size, type Unit } from '../length/length.ts'
import type { MessageKey } from './catalogue.ts'
import type { Last } from './conventions.ts'
import { type Locale, localeFor } from './locales.ts'
import type { MessageValues } from './message.ts'
import { ownName, tongueFor } from './tongue.ts'

/** How a print speaks: its language, with all that is fixed or generated in it, and the unit of its measures. */
export interface Wording {
  /** The language tag of the lesson, for what shows its words. */
  readonly lang: string
  /** The language of the words that are foldlore's own. */
  readonly locale: Locale
  readonly unit: Unit
  /** The same language in another unit. */
  in(unit: Unit): Wording
  /** A message of the catalogue. What is put into it must be there by the name that the message has for it. */
  say(key: MessageKey, values?: MessageValues): string
  /** The name of a panel, a piece or a fold of foldlore's own; a name that a lesson has given stays. */
  name(name: string): string
  /** `a, b and c`, `a, b or c`. */
  list(items: readonly string[], last?: Last): string
  /** `February 2025`; months are numbered from 1. */
  month(year: number, month: number): string
  /** A number as it is written: `5 7/8`, `0.5`, `0,5`. */
  number(x: Fraction): string
  /** A length without its unit. */
  bare(x: Length): string
  /** `5 7/8 in`, `12,5 mm`. */
  length(x: Length): string
  /** `8 × 6 in`: width first. */
  size(size: Size): string
  /** `1, 2, 8 and 9 in`: the unit stands once, at the end. */
  lengths(lengths: readonly Length[]): string
  /** A ruler grid as it is named, in whichever unit it is exact: `1/16 in`, `1 mm`. */
  grid(grid: Length): string
}

/**
 * How a print in a language and a unit speaks.
 *
 * @param lang a language tag (BCP 47). In a language whose words are not known, what is foldlore's own is in British
 * English.
 */
export function wordingOf(lang: string, unit: Unit): Wording {
  const locale = localeFor(lang)
  const { say, list, pointed, month } = tongueFor(lang)
  const bare = (x: Length): string => pointed(formatBare(x, unit))
  const withUnit = (number: string): string =>
    say('measures.with-unit', { number, unit: say(`measures.${unit}`) })
  const wording: Wording = {
    lang,
    locale,
    unit,
    in: (other) => (other === unit ? wording : wordingOf(lang, other)),
    say,
    name: (name) => ownName(lang, name),
    list,
    month,
    number: (x) => pointed(formatNumber(x, unit)),
    bare,
    length: (x) => withUnit(bare(x)),
    size: ({ width, height }) => withUnit(`${bare(width)} × ${bare(height)}`),
    lengths: (lengths) => (lengths.length === 0 ? say('measures.none') : withUnit(list(lengths.map(bare)))),
    grid: (grid) => {
      const other = isOnGrid(grid, inches(1, 64)) ? 'in' : 'mm'
      return other === unit ? wording.length(grid) : wordingOf(lang, other).length(grid)
    },
  }
  return wording
}
