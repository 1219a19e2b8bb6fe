/** A word of a list, as a text has it. */
export interface FoundWord {
  /** As it stands in the list. */
  readonly word: string
  readonly start: number
  readonly end: number
}

/** Finds words of a list in a text. */
export type FindWords = (text: string) => FoundWord[]

/**
 * Makes what finds words as wholes: in any letter case, one or several, with a hyphen where the list has a space. Where
 * one word holds another, the longer one is found, and not the other.
 *
 * @param words in the singular.
 */
export function wordFinder(words: readonly string[]): FindWords {
  const forms = new Map<string, string>()
  for (const word of words) for (const form of [word, pluralOf(word)]) forms.set(spaced(form), word)
  const longestFirst = [...forms.keys()].sort((a, b) => b.length - a.length)
  const any = longestFirst.map((form) => escaped(form).replaceAll(' ', '[\\s-]+')).join('|')
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${any})(?![\\p{L}\\p{N}])`, 'giu')
  return (text) =>
    words.length === 0
      ? []
      : [...text.matchAll(pattern)].map(({ 0: found, index }) => ({
          word: forms.get(spaced(found)) ?? found,
          start: index,
          end: index + found.length,
        }))
}

const spaced = (text: string): string => text.toLowerCase().replace(/[\s-]+/g, ' ')

const escaped = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')

/** Several of it: `knives`, `batteries`, `punches`, `beads`. */
export function pluralOf(word: string): string {
  if (/knife$/.test(word)) return word.replace(/fe$/, 'ves')
  if (/[^aeiou]y$/.test(word)) return word.replace(/y$/, 'ies')
  if (/(?:s|x|ch|sh)$/.test(word)) return `${word}es`
  return `${word}s`
}
