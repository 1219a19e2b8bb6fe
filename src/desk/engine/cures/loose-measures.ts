import type { Healer } from '../cures.ts'
import type { Cure } from '../engine.ts'

/** A name in the place of a plain number, or the word that it is meant as it stands. */
export const nameMeasure: Healer = ({ message, suggestion = '', from, to, was }, { lesson }) => {
  const said = /^`([^`]+)`/.exec(message)?.[1]
  // In the front matter no name can stand, and what is written in another way than it is read is left to a hand.
  if (said === undefined || plain(was) !== plain(said) || suggestion.startsWith('No name')) return []
  // Behind a backslash a brace is text, and behind a bracket it belongs to what the bracket closes.
  if (/[\\\]]$/.test(lesson.source.text.slice(0, from))) return []
  return [...suggestion.matchAll(/`(\{[^`]+\}|:meant\[[^`]+\])`/g)].flatMap(([, insert = '']): Cure[] => {
    if (suggestion.includes(`such as \`${insert}\``)) return []
    const words = insert.startsWith('{') ? `Write \`${insert}\`` : 'It is the same at every size'
    return [{ words, edits: [{ from, to, insert }] }]
  })
}

const plain = (text: string): string => text.replace(/\s+/g, ' ')
