import type { Draft } from './drafts.ts'
import type { Kept } from './store.ts'

/**
 * What a file is to a text that goes back to it.
 *
 * `same`: the file is what the text was made from, or holds it already; one goes on with the text. `newer`: the file
 * was changed, and nothing of the text is unsaved; one goes on with the file. `both`: both were changed.
 */
export type Meeting = 'same' | 'newer' | 'both'

/** @param mine a draft, or what is on the desk: its text, the version it was made from, and what was sent. */
export function meet(mine: Pick<Draft, 'text' | 'base' | 'unsaved' | 'sent'>, theirs: Kept): Meeting {
  const known = mine.text === theirs.text || mine.base === theirs.version
  if (known || mine.sent?.includes(theirs.text)) return 'same'
  return mine.unsaved ? 'both' : 'newer'
}
