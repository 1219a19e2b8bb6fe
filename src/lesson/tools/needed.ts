import type { Locale } from '../../wording/locales.ts'
import type { FilledLesson } from '../lesson.ts'
import type { FindMentions } from '../prose/mentions.ts'
import { overlaps, type Sentence } from '../prose/sentence.ts'
import { ways } from '../safety/ways.ts'
import type { Tool } from './tool.ts'
import { toolsIn } from './vocabulary.ts'

/** A tool that a sentence names, and where in its words. */
export interface Asked {
  readonly tool: Tool
  readonly sentence: Sentence
  readonly start: number
  readonly end: number
}

/** Every tool that these sentences want at hand. What is done without is not wanted, and a piece of the card is no tool. */
export const askedIn = (sentences: readonly Sentence[], mentions: FindMentions, locale: Locale): Asked[] =>
  sentences.flatMap((sentence) => {
    const { words } = sentence
    const found = toolsIn(words, locale).filter(
      ({ start, end }) => !ways[locale].isRefused(words.slice(0, start), words.slice(end)),
    )
    if (found.length === 0) return []
    const pieces = mentions(sentence)
    return found
      .filter((named) => !pieces.some((piece) => overlaps(piece, named)))
      .map((named) => ({ ...named, sentence }))
  })

/** Every tool on the list of a lesson, the tutor's and its paper included. */
export function listedIn({
  supplies,
  cards,
  wording: { locale },
}: Pick<FilledLesson, 'supplies' | 'cards' | 'wording'>): Tool[] {
  const { each, shared, tutor } = supplies
  const items = [...each, ...shared, ...tutor].map(({ item }) => item)
  const stocks = cards.flatMap(({ card }) => card.structure.pieces.map(({ stock }) => stock.name))
  return [...items, ...stocks].flatMap((text) => toolsIn(text, locale).map(({ tool }) => tool))
}
