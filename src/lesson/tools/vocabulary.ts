import { onceFor } from '../../length/once.ts'
import type { Locale } from '../../wording/locales.ts'
import { spellings } from '../prose/spellings.ts'
import { type FindWords, wordFinder } from '../prose/word-list.ts'
import { listed } from '../safety/words/listed.ts'
import { cuttingTools } from './cutting-tools.ts'
import { markingTools } from './marking-tools.ts'
import { isSomethingElse } from './something-else.ts'
import { stickingTools } from './sticking-tools.ts'
import type { Tool } from './tool.ts'
import { de } from './words/de.ts'
import { es } from './words/es.ts'
import { fr } from './words/fr.ts'
import type { ToolWords } from './words/tool-words.ts'

/** The tools and supplies that are known by name, in English. */
export const vocabulary: readonly Tool[] = [...cuttingTools, ...stickingTools, ...markingTools]

/** Fewer are known in other languages. */
export const toolWords: Partial<Readonly<Record<Locale, ToolWords>>> = { de, fr, es }

/** A tool or a supply that a text names. */
export interface NamedTool {
  readonly tool: Tool
  readonly start: number
  readonly end: number
}

interface Lookup {
  readonly meanings: ReadonlyMap<string, Tool>
  readonly find: FindWords
}

/** Made once for each language, when a lesson is in it. */
const lookupIn = onceFor((locale: Locale): Lookup => {
  const own = toolWords[locale]
  const meanings = new Map(
    vocabulary.flatMap((tool) => {
      const words = own ? listed(own[tool.name] ?? '') : [tool.name, ...(tool.words ?? [])]
      return words.filter((word) => word !== '').map((word) => [word, tool] as const)
    }),
  )
  return { meanings, find: wordFinder([...meanings.keys()], spellings[locale]) }
})

/** Every tool that a text names in its language, in the order of the words; the longer name wins. */
export function toolsIn(text: string, locale: Locale): NamedTool[] {
  const { meanings, find } = lookupIn(locale)
  return find(text).flatMap(({ word, start, end }) => {
    const tool = meanings.get(word)
    const [before, own, after] = [text.slice(0, start), text.slice(start, end), text.slice(end)]
    const isOther = !toolWords[locale] && tool && isSomethingElse(before, after, own, tool)
    return tool && !isOther ? [{ tool, start, end }] : []
  })
}

/** Whether one can be had where the other is asked for: the same, a kind of it, or a looser word for it. */
export const serves = (had: Tool, asked: Tool): boolean =>
  had === asked || isKindOf(had, asked) || isKindOf(asked, had)

const isKindOf = (one: Tool, other: Tool): boolean => one.is?.includes(other.name) ?? false
