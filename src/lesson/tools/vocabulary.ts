import { englishSpelling, wordFinder } from '../prose/word-list.ts'
import { cuttingTools } from './cutting-tools.ts'
import { markingTools } from './marking-tools.ts'
import { stickingTools } from './sticking-tools.ts'
import type { Tool } from './tool.ts'

/** The tools and supplies that are known by name. In English: a lesson in another language names none of them. */
export const vocabulary: readonly Tool[] = [...cuttingTools, ...stickingTools, ...markingTools]

/** A tool or a supply that a text names. */
export interface NamedTool {
  readonly tool: Tool
  readonly start: number
  readonly end: number
}

const meanings = new Map(
  vocabulary.flatMap((tool) => [tool.name, ...(tool.words ?? [])].map((word) => [word, tool] as const)),
)
const finder = wordFinder([...meanings.keys()], englishSpelling)

/** Every tool that a text names, in the order of the words; the longer name wins. */
export const toolsIn = (text: string): NamedTool[] =>
  finder(text).flatMap(({ word, start, end }) => {
    const tool = meanings.get(word)
    return tool && !isSomethingElse(tool, text.slice(0, start), text.slice(start, end), text.slice(end))
      ? [{ tool, start, end }]
      : []
  })

/** Whether one can be had where the other is asked for: the same, a kind of it, or a looser word for it. */
export const serves = (had: Tool, asked: Tool): boolean =>
  had === asked || isKindOf(had, asked) || isKindOf(asked, had)

const isKindOf = (one: Tool, other: Tool): boolean => one.is?.includes(other.name) ?? false

/** Words that are deeds as well: `tape it down`, `glue the flap`. */
const deeds: ReadonlySet<string> = new Set([
  'tape',
  'glue',
  'punch',
  'hammer',
  'iron',
  'stapler',
  'paint',
  'stencil',
  'adhesive',
])

const behindNoun =
  /(?:^|[,;:(] ?|\b(?:an?|the|your|some|any|more|little|drop|line|dab|bit|piece|strip|length|of|with|without|no|and|or|put|puts|add|use|using|apply|take|spread|run|wet|thin|clear|strong|craft|liquid) )$/i

/** A deed by the word of a tool, the thing on a picture, or a word that only begins alike. */
function isSomethingElse(tool: Tool, before: string, word: string, after: string): boolean {
  if (/^[ -](?:paper|card|shape|stencil|sticker|picture|pattern|motif|design|line)s?\b/i.test(after))
    return true
  // `and glue it` does something, `with tape and glue.` names something.
  if (!deeds.has(tool.name) || /\s/.test(word)) return false
  if (
    /^ (?:it|them|the|this|that|these|those|a|an|one|both|each|all|its|down|together|along|everything|another|two|three|four)\b/i.test(
      after,
    )
  )
    return !/\b(?:with|the|some|your|put|no|more|of|use|add) $/i.test(before)
  return !behindNoun.test(before) || (before.trim() === '' && after.trim() !== '')
}
