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
  return nearest(word, known, Math.max(2, Math.floor(word.length / 3)))
}

function nearest(word: string, known: Iterable<string>, most: number): string | undefined {
  let best: string | undefined
  let least = most + 1
  for (const candidate of known) {
    const d = distance(word.toLowerCase(), candidate.toLowerCase())
    // Of a word that is changed in each letter nothing is left.
    if (d < least && d < Math.max(word.length, candidate.length)) [best, least] = [candidate, d]
  }
  return best
}

const wordsIn = (name: string): string[] => name.toLowerCase().split(/[\s-]+/)

/** The names that have `word` in them, such as `box step` and `match box` for `box`. */
function namesWith(word: string, known: readonly string[]): string[] {
  const wanted = wordsIn(word)
  return known.filter((name) => {
    const words = wordsIn(name)
    return wanted.every((each) => words.includes(each))
  })
}

/** The longest name that `word` only says more than, such as `gate` for `gatefold`; two letters are too few to tell. */
function beginningOf(word: string, known: readonly string[]): string | undefined {
  const said = word.toLowerCase()
  return known
    .filter((name) => name.length > 2 && said.startsWith(name.toLowerCase()))
    .filter((name) => /^[\p{L} -]/u.test(said.slice(name.length)))
    .sort((a, b) => b.length - a.length)[0]
}

/** The names of `known` that `word` may stand for, the best guess alone where there is one. */
function meantBy(word: string, known: readonly string[]): readonly string[] {
  const slip = nearest(word, known, 1)
  if (slip !== undefined) return [slip]
  const longer = namesWith(word, known)
  if (longer.length > 0) return longer
  const near = nearestWord(word, known) ?? beginningOf(word, known)
  return near === undefined ? [] : [near]
}

/** "a, b and c": how a list is said. */
export function listOf(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`
}

/** "Write `beam`" when one word is likely, or the words to choose from. */
export function suggestWord(word: string, known: readonly string[]): string {
  const meant = meantBy(word, known)
  const [only] = meant
  if (only !== undefined && meant.length === 1) return `Write \`${only}\``
  const choice = meant.length > 0 ? meant : known
  return choice.length > 0
    ? `Choose one of ${listOf(
        choice.map((each) => `\`${each}\``),
        'or',
      )}`
    : 'Take it out'
}
