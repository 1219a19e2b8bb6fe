import type { Card } from '../../card/card.ts'
import type { Named } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { Literal } from './literal.ts'
import { literalsIn } from './literals.ts'
import { type Spoken, spokenFinder } from './spoken.ts'

/** A sentence with the plain numbers in it, and what it speaks of. */
export interface Passage {
  readonly sentence: Sentence
  readonly literals: readonly Literal[]
  readonly spoken: readonly Spoken[]
}

/**
 * The sentences of a lesson with their plain numbers. Measures in braces, words that are meant, and the names of stocks
 * and supplies ("2 mm foam pads") hold none.
 */
export function passagesOf(
  sentences: readonly Sentence[],
  cards: readonly Card[],
  named: readonly Named[],
  stocks: readonly string[],
): Passage[] {
  const find = spokenFinder(cards, named)
  const own = stocks.filter((stock) => literalsIn(stock).length > 0).map((stock) => stock.toLowerCase())
  return sentences.map((sentence) => {
    const literals = literalsIn(masked(sentence, own))
    // Nothing is asked of the other sentences but what they speak of, for the numbers near them.
    return { sentence, literals, spoken: find(sentence) }
  })
}

/**
 * The words of a sentence with signs that mean nothing in place of its measures and of what is meant: a plain number can
 * only be elsewhere.
 *
 * @param stocks names in lower case that hold no plain number either.
 */
export function masked(
  { words, measures, meant }: Pick<Sentence, 'words' | 'measures' | 'meant'>,
  stocks: readonly string[] = [],
): string {
  const low = words.toLowerCase()
  const names = stocks.flatMap((stock) => {
    const start = low.indexOf(stock)
    return start < 0 ? [] : [{ start, end: start + stock.length }]
  })
  return [...measures, ...meant, ...names].reduce(
    (text, { start, end }) => text.slice(0, start) + '\ufffc'.repeat(end - start) + text.slice(end),
    words,
  )
}
