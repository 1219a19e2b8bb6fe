import type { Card } from '../../card/card.ts'
import type { Supplies } from '../lesson.ts'
import { namedIn } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import { isInEnglish } from '../rules/in-english.ts'
import type { RuleInput } from '../rules/rule.ts'
import { frontMatterTexts } from './front-matter-texts.ts'
import { literalsIn } from './literals.ts'
import { type LooseNumber, looseNumbers } from './loose-numbers.ts'
import { ownCards } from './own-cards.ts'
import { masked } from './passages.ts'

/** What is wanted of a lesson to find its plain numbers. */
export type LooseInput = Pick<RuleInput, 'lesson' | 'filled' | 'wishes' | 'prose'>

/** The plain numbers of a lesson: of its words, and of the texts in its front matter. */
export interface LooseInLesson {
  readonly words: readonly LooseNumber[]
  readonly front: readonly LooseNumber[]
}

/**
 * Finds the plain numbers of a lesson, named by its cards as they are written.
 *
 * @param mayConvert whether a text that is written in the other unit throughout may go over to the lesson's.
 */
export function looseInLesson(input: LooseInput, mayConvert = false): LooseInLesson {
  const { lesson, filled, prose } = input
  const front = frontMatterTexts(lesson)
  const sentences = isInEnglish(input) ? prose.sentences() : prose.sentences().map(withoutInches)
  // Most lessons have none, and need no cards of another size for it.
  if (![...front, ...sentences].some((sentence) => literalsIn(masked(sentence)).length > 0))
    return { words: [], front: [] }
  const cards = ownCards(input)
  const common = {
    cards,
    named: namedIn(cards),
    stocks: stocksOf(filled.supplies, cards),
    unit: lesson.frontMatter.units,
    mayConvert,
  }
  return {
    words: looseNumbers({ ...common, sentences }),
    front: front.flatMap((text) => looseNumbers({ ...common, sentences: [text] })),
  }
}

/** In another language an `in` behind a number may be any word. */
function withoutInches(sentence: Sentence): Sentence {
  const words = [...sentence.words.matchAll(/\d in(?![\p{L}])/gu)]
  const meant = words.map(({ index, 0: found }) => ({ start: index, end: index + found.length }))
  return { ...sentence, meant: [...sentence.meant, ...meant] }
}

/** What papers and supplies are called. */
const stocksOf = ({ each, shared, tutor }: Supplies, cards: readonly Card[]): string[] => [
  ...[...each, ...shared, ...tutor].map(({ item }) => item),
  ...cards.flatMap(({ structure }) => structure.pieces.map(({ stock }) => stock.name)),
]
