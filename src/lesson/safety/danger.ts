import { onceFor } from '../../length/once.ts'
import type { Locale } from '../../wording/locales.ts'
import { spellings } from '../prose/spellings.ts'
import { type FindWords, wordFinder } from '../prose/word-list.ts'
import type { Hazard } from './hazard.ts'
import { hazards } from './hazards.ts'
import { ways } from './ways.ts'
import { wordsOf } from './words.ts'

/** Words of a text that name a tool or a supply with a hazard. */
export interface Danger {
  readonly hazard: Hazard
  readonly start: number
  readonly end: number
}

/** How a text is read. */
export interface Reading {
  /** An item of a list says nothing but its name; a caution speaks of what it names, however it puts it. */
  readonly as: 'item' | 'step' | 'caution'
  readonly children: boolean
  /** The language of its words. */
  readonly locale: Locale
  /** Whether a stretch of it means something else, such as a piece of the card. */
  readonly isTaken?: (start: number, end: number) => boolean
}

interface Meaning {
  readonly hazard: Hazard
  readonly how: 'always' | 'alone' | 'children'
}

interface Vocabulary {
  /** What each word means; those that are only looked like mean nothing. */
  readonly meanings: ReadonlyMap<string, readonly Meaning[]>
  readonly find: FindWords
}

/** Made once for each language, for few lessons are in several. */
const vocabularyOf = onceFor((locale: Locale): Vocabulary => {
  const meanings = new Map<string, Meaning[]>()
  for (const hazard of hazards) {
    const { words, alone = [], forChildren = [], not = [] } = wordsOf(hazard, locale)
    for (const [how, list] of [
      ['always', words],
      ['alone', alone],
      ['children', forChildren],
    ] as const)
      for (const word of list) meanings.set(word, [...(meanings.get(word) ?? []), { hazard, how }])
    for (const word of not) if (!meanings.has(word)) meanings.set(word, [])
  }
  return { meanings, find: wordFinder([...meanings.keys()], spellings[locale]) }
})

/** Everything in a text that names a tool or a supply with a hazard, in the order of the words. */
export function dangersIn(text: string, { as, children, locale, isTaken }: Reading): Danger[] {
  const { meanings, find } = vocabularyOf(locale)
  const { isRefused, isPicture, isUsed } = ways[locale]
  return find(text).flatMap(({ word, start, end }) => {
    const [before, after] = [text.slice(0, start), text.slice(end)]
    const isMeant = ({ hazard, how }: Meaning): boolean => {
      if (how === 'children' && !children) return false
      if (as === 'caution') return true
      if (hazard.pictured && isPicture(before, after, text.slice(start, end))) return false
      return how !== 'alone' || (as === 'item' ? isWhole(before, after) : isUsed(before, after))
    }
    if (isTaken?.(start, end) || (as === 'step' && isRefused(before, after))) return []
    return (meanings.get(word) ?? []).filter(isMeant).map(({ hazard }) => ({ hazard, start, end }))
  })
}

/** `iron`, `iron (warm)`; but not `iron gate`. */
const isWhole = (before: string, after: string): boolean =>
  before.trim() === '' && /^\s*(?:$|[,(]|(?:or|and|oder|und|ou|et|o|y)\s)/.test(after)
