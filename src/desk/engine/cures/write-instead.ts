import type { Placed } from '../cures.ts'
import type { Cure } from '../engine.ts'
import type { KeptLesson } from '../kept-lesson.ts'

/** Rules whose suggestion is the very word that belongs there, and no example of one. */
const isWord = (rule: string, message: string): boolean =>
  /^(?:unknown-|ambiguous-name$|no-unit$)/.test(rule) ||
  (rule === 'value' && message.startsWith('Unexpected '))

/** More than these are no help: a list to choose from is. */
const most = 4

/** ``Write `backdrop` `` becomes `backdrop` in the place of the wrong word. */
export function writeInstead(finding: Placed, { lesson }: KeptLesson): Cure[] {
  const { rule, message, suggestion = '' } = finding
  if (!isWord(rule, message)) return []
  const words = wordsToWrite(suggestion)
  if (words.length > most) return []
  const { text } = lesson.source
  return words.flatMap((word): Cure[] => {
    const made = replacement(finding, word, text)
    return made ? [{ words: `Write \`${word}\``, edits: [made] }] : []
  })
}

/** The words in backticks that a suggestion is to write or to choose from; none when it says more about them. */
export function wordsToWrite(suggestion: string): string[] {
  let rest = /^(?:Write|Choose one of) (?=`)(.*)$/s.exec(suggestion)?.[1] ?? ''
  const words: string[] = []
  for (let found = /^`([^`]+)`/.exec(rest); found; found = /^`([^`]+)`/.exec(rest)) {
    words.push(found[1] ?? '')
    rest = rest.slice(found[0].length).replace(/^(?:, | or )(?=`)/, '')
  }
  return rest === '' || /^(?:; put a value|, if that is meant| behind the backticks)/.test(rest) ? words : []
}

function replacement({ rule, message, from, to, was }: Placed, word: string, text: string) {
  if (rule === 'unknown-directive') return directive(was, from, word)
  const wrong = /`([^`]+)`/.exec(message)?.[1] ?? was
  const at = was.indexOf(wrong)
  // Of a longer stretch only the wrong word is touched: quotation marks and the value of an attribute stay.
  const within = at >= 0 && (/^["']/.test(was) || isPartly(rule))
  const start = within ? from + at : from
  const end = within ? start + wrong.length : to
  if (!within && /[\r\n]/.test(was)) return undefined
  const bare = /^of="(.*)"$/.exec(word)?.[1] ?? word
  const wantsMarks = /\s/.test(bare) && /=$/.test(text.slice(0, start)) && isInDirective(rule)
  return { from: start, to: end, insert: wantsMarks ? `"${bare}"` : bare }
}

/** Whether the place is of more than the wrong word. */
const isPartly = (rule: string): boolean =>
  ['unknown-attribute', 'unknown-block', 'unknown-hazard'].includes(rule)

const isInDirective = (rule: string): boolean => rule === 'unknown-piece' || rule === 'ambiguous-name'

/** Colons and name of a directive; what stands behind them stays. */
function directive(was: string, from: number, word: string) {
  const [old] = /^:+[\p{L}\p{N}_-]+/u.exec(was) ?? []
  const [better] = /^:+[a-z]+/.exec(word) ?? []
  return old && better ? { from, to: from + old.length, insert: better } : undefined
}
