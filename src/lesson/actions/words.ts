import type { Mention } from '../prose/mentions.ts'
import type { Sentence } from '../prose/sentence.ts'

/** A word of a sentence, in lower case. A measure is one word. */
export interface Word {
  readonly text: string
  readonly start: number
  readonly end: number
  /** A comma or another mark stands before it, or nothing at all. */
  readonly opens: boolean
  readonly kind: 'plain' | 'name' | 'measure' | 'number'
}

const mark = /[,;:.!?()–—]/
const pattern = /[\p{L}\p{N}]+(?:['’/.-][\p{L}\p{N}]+)*/gu

/** The words of a sentence. Those of a name of the card are no verbs and no prepositions, so they are told apart. */
export function wordsOf(
  { words, measures }: Pick<Sentence, 'words' | 'measures'>,
  mentions: readonly Mention[],
): Word[] {
  const all: Word[] = []
  let before = 0
  const add = (text: string, start: number, end: number, kind: Word['kind']): void => {
    all.push({ text, start, end, kind, opens: all.length === 0 || mark.test(words.slice(before, start)) })
    before = end
  }
  let next = 0
  for (const { index: start, 0: text } of words.matchAll(pattern)) {
    const end = start + text.length
    for (let measure = measures[next]; measure && measure.start < end; measure = measures[++next])
      add('', measure.start, measure.end, 'measure')
    if (start < before) continue
    const isName = mentions.some((mention) => start < mention.end && mention.start < end)
    const kind = isName ? 'name' : /^\p{N}/u.test(text) ? 'number' : 'plain'
    add(text.toLowerCase().replaceAll('’', "'"), start, end, kind)
  }
  return all
}
