import type { Tool } from './tool.ts'

/** English words that are deeds as well: `tape it down`, `glue the flap`. */
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

/** In English: a deed by the word of a tool, the thing on a picture, or a word that only begins alike. */
export function isSomethingElse(before: string, after: string, word: string, tool: Tool): boolean {
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
