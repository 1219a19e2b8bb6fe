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
  // By their first part, the longest first: of a text only the words that begin one of them are looked at twice.
  const byFirst = new Map<string, Form[]>()
  for (const word of words)
    for (const written of [word, pluralOf(word)]) {
      const [first = '', ...rest] = written.toLowerCase().split(/[ -]+/)
      const forms = byFirst.get(first)
      if (forms) forms.push({ word, rest })
      else byFirst.set(first, [{ word, rest }])
    }
  for (const forms of byFirst.values()) if (forms.length > 1) forms.sort((x, y) => lengthOf(y) - lengthOf(x))
  return (text) => {
    const parts = [...text.matchAll(part)].map(({ 0: own, index }) => ({
      text: own.toLowerCase(),
      start: index,
      end: index + own.length,
    }))
    const found: FoundWord[] = []
    for (let i = 0; i < parts.length; i++) {
      const form = byFirst.get(parts[i]?.text ?? '')?.find(({ rest }) => goesOn(text, parts, i, rest))
      if (!form) continue
      const last = i + form.rest.length
      found.push({ word: form.word, start: parts[i]?.start ?? 0, end: parts[last]?.end ?? 0 })
      i = last
    }
    return found
  }
}

/** One way to write a word: what stands behind its first part. */
interface Form {
  readonly word: string
  readonly rest: readonly string[]
}

interface Part {
  readonly text: string
  readonly start: number
  readonly end: number
}

const part = /[\p{L}\p{N}]+(?:['’][\p{L}\p{N}]+)*/gu
const lengthOf = ({ rest }: Form): number => rest.join(' ').length

/** Whether a text goes on behind a part with these, with spaces or hyphens between. */
const goesOn = (text: string, parts: readonly Part[], at: number, rest: readonly string[]): boolean =>
  rest.every((own, k) => {
    const [before, next] = [parts[at + k], parts[at + k + 1]]
    return next?.text === own && /^[\s-]+$/.test(text.slice(before?.end, next.start))
  })

/** Several of it: `knives`, `batteries`, `punches`, `beads`. */
function pluralOf(word: string): string {
  if (/knife$/.test(word)) return word.replace(/fe$/, 'ves')
  if (/[^aeiou]y$/.test(word)) return word.replace(/y$/, 'ies')
  if (/(?:s|x|ch|sh)$/.test(word)) return `${word}es`
  return `${word}s`
}
