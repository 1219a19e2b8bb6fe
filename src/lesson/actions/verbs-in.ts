import {
  beforeBase,
  beforeDone,
  beforeIng,
  notDone,
  nounTails,
  relative,
  type VerbKind,
  verbs,
} from './verbs.ts'
import type { Word } from './words.ts'

/** A verb of a sentence that names something a hand does. */
export interface Verb {
  readonly kind: VerbKind
  /** Which word of the sentence. */
  readonly at: number
  /** `The base is cut`: what it is done to stands before it. */
  readonly isPassive: boolean
  /** Not in `do not cut`, `before you cut`, `if you cut`. */
  readonly isDone: boolean
  /** The first word of its clause. */
  readonly clause: number
}

/** The verbs of a sentence, in order. Nouns of the same spelling, such as `the fold` and `a score`, are none. */
export function verbsIn(words: readonly Word[]): Verb[] {
  return words.flatMap(({ text, kind }, at): Verb[] => {
    const meaning = kind === 'plain' ? verbs.get(text) : undefined
    const next = words[at + 1]
    if (!meaning || (next && !next.opens && nounTails.has(next.text))) return []
    const before = beforeIt(words, at)
    const is = (form: 'base' | 'ing' | 'done', after: ReadonlySet<string>): boolean =>
      meaning.forms.includes(form) && (before === undefined || after.has(before))
    const isPassive = before !== undefined && passive.has(before) && is('done', beforeDone)
    const clause = clauseOf(words, at)
    const notYet = before !== undefined && notDone.has(before)
    if (!notYet && !isPassive && !is('base', beforeBase) && !is('ing', beforeIng) && !is('done', beforeDone))
      return []
    return [{ kind: meaning.kind, at, isPassive, isDone: isDone(words, clause, at), clause }]
  })
}

const passive = new Set('is are be been being gets get'.split(' '))
const between = /^(?:\p{L}+ly|then|now|again|also|just|first|next)$/u

/** The word before a verb, adverbs left out; nothing at the start of a clause. */
function beforeIt(words: readonly Word[], at: number): string | undefined {
  for (let i = at; i > 0; i--) {
    const word = words[i]
    const before = words[i - 1]
    if (!word || word.opens || !before) return undefined
    if (before.kind === 'plain' && between.test(before.text)) continue
    return before.kind === 'plain' ? before.text : ''
  }
  return undefined
}

function clauseOf(words: readonly Word[], at: number): number {
  let i = at
  while (i > 0 && !words[i]?.opens) i--
  return i
}

/** Whether nothing in its clause takes it back. */
function isDone(words: readonly Word[], clause: number, at: number): boolean {
  const before = words.slice(clause, at).map(({ text }) => text)
  const last = before.findLastIndex((text) => relative.has(text))
  const isRelative = last >= 0 && !before.slice(last).some((text) => text === 'and' || text === 'then')
  return !isRelative && !before.some((text) => notDone.has(text))
}
