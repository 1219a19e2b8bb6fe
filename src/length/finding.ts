import { distance } from 'fastest-levenshtein'

export type Severity = 'error' | 'warning' | 'hint'

/** Where in a file something stands. Lines and columns count from 1, offsets from 0, in UTF-16 code units. */
export interface Place {
  readonly line: number
  readonly column: number
  readonly offset?: number
  /** Offset of the first character after it. */
  readonly end?: number
}

/** One thing that is wrong, or could go wrong, and what would cure it. */
export interface Finding {
  /** Short name of the rule, the same for every finding of the kind, such as `unknown-name`. */
  readonly rule: string
  readonly severity: Severity
  readonly message: string
  readonly suggestion?: string
  readonly place?: Place
}

/** Whether any of the findings is an error: the one test of "can we go on". */
export const hasErrors = (findings: readonly Finding[]): boolean =>
  findings.some((f) => f.severity === 'error')

/** Those of the findings that are errors. */
export const errorsIn = (findings: readonly Finding[]): Finding[] =>
  findings.filter(({ severity }) => severity === 'error')

/** The word of `known` that `word` was probably meant to be, if one is near enough to be worth naming. */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined
  let least = Math.max(2, Math.floor(word.length / 3)) + 1
  for (const candidate of known) {
    const d = distance(word.toLowerCase(), candidate.toLowerCase())
    if (d < least) [best, least] = [candidate, d]
  }
  return best
}

/** "a, b and c": how a list is said. */
export function listOf(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`
}

/** "Write `beam`" when a near word is known, or the words to choose from. */
export function suggestWord(word: string, known: readonly string[]): string {
  const near = nearestWord(word, known)
  if (near !== undefined) return `Write \`${near}\``
  return known.length > 0
    ? `Choose one of ${listOf(
        known.map((k) => `\`${k}\``),
        'or',
      )}`
    : 'Take it out'
}
