/** A word of a list, as a text has it. */
export interface FoundWord {
  /** As it stands in the list. */
  readonly word: string
  readonly start: number
  readonly end: number
}

/** Finds words of a list in a text. */
export type FindWords = (text: string) => FoundWord[]

/** How a language writes the words of a list. */
export interface Spelling {
  /** A part of a text: a word, as a rule. */
  readonly part: RegExp
  /** What may stand between parts that belong together. */
  readonly between: RegExp
  /** What is left of a part when all that is written one way or another is alike. */
  readonly alike: (part: string) => string
  /** All ways to write a word of a list, of one and of several. */
  readonly written: (word: string) => readonly string[]
}

/** In any letter case, one or several, with a hyphen where the list has a space. */
export const englishSpelling: Spelling = {
  part: /[\p{L}\p{N}]+(?:['’][\p{L}\p{N}]+)*/gu,
  between: /^[\s-]+$/,
  alike: (part) => part.toLowerCase(),
  written: (word) => [word, pluralOf(word)],
}

/**
 * Makes what finds words as wholes. Where one word holds another, the longer one is found, and not the other.
 *
 * @param words in the singular. One that begins with a hyphen is found at the end of longer words too.
 */
export function wordFinder(words: readonly string[], spelling: Spelling): FindWords {
  const { part, between, alike, written } = spelling
  // By their first part, the longest first: of a text only the words that begin one of them are looked at twice.
  const byFirst = new Map<string, Form[]>()
  const heads = new Set<string>()
  for (const word of words)
    for (const form of written(word.replace(/^-/, ''))) {
      const [first = '', ...rest] = (form.match(part) ?? []).map(alike)
      if (word.startsWith('-')) heads.add(first)
      const forms = byFirst.get(first)
      if (forms) forms.push({ word, rest })
      else byFirst.set(first, [{ word, rest }])
    }
  for (const forms of byFirst.values()) if (forms.length > 1) forms.sort((x, y) => lengthOf(y) - lengthOf(x))
  const formsOf = (first: string): readonly Form[] =>
    byFirst.get(first) ?? byFirst.get(headOf(first, heads)) ?? []
  return (text) => {
    const parts = [...text.matchAll(part)].map(({ 0: own, index }) => ({
      text: alike(own),
      start: index,
      end: index + own.length,
    }))
    const goesOn = (at: number, { rest }: Form): boolean =>
      rest.every((own, k) => {
        const [before, next] = [parts[at + k], parts[at + k + 1]]
        return next?.text === own && between.test(text.slice(before?.end, next.start))
      })
    const found: FoundWord[] = []
    for (let i = 0; i < parts.length; i++) {
      const form = formsOf(parts[i]?.text ?? '').find((one) => goesOn(i, one))
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

const lengthOf = ({ rest }: Form): number => rest.join(' ').length

/** The longest of these that a word ends with. */
function headOf(word: string, heads: ReadonlySet<string>): string {
  if (heads.size === 0) return ''
  for (let i = 1; i < word.length - 2; i++) if (heads.has(word.slice(i))) return word.slice(i)
  return ''
}

/** Several of it: `knives`, `batteries`, `punches`, `beads`. */
function pluralOf(word: string): string {
  if (word.endsWith('knife')) return word.replace(/fe$/, 'ves')
  if (/[^aeiou]y$/.test(word)) return word.replace(/y$/, 'ies')
  if (/(?:s|x|ch|sh)$/.test(word)) return `${word}es`
  return `${word}s`
}
