import type { FilledLesson, Lesson } from '../lesson.ts'
import type { Sentence } from '../prose/sentence.ts'
import { sentencesOf } from '../prose/sentences.ts'
import type { Literal } from './literal.ts'
import { literalsIn } from './literals.ts'
import { masked } from './passages.ts'

/**
 * What a lesson says when it is printed, one text a sentence, with every measure as what it comes to: `5⅞"`, `5 7/8 in`
 * and a name of that length are the same.
 */
export function printedWords(filled: Pick<FilledLesson, 'tree'>, lesson: Pick<Lesson, 'source'>): string[] {
  return sentencesOf(filled.tree, lesson.source).map(wordsOf)
}

function wordsOf(sentence: Sentence): string {
  const { words, measures } = sentence
  const filled = measures.map(({ start, end }) => ({
    start,
    end,
    says: valueOfText(words.slice(start, end)),
  }))
  const plain = literalsIn(masked({ ...sentence, meant: [] })).map((literal) => ({
    ...literal,
    says: valueOfLiteral(literal),
  }))
  let at = 0
  let text = ''
  for (const { start, end, says } of [...filled, ...plain].sort((a, b) => a.start - b.start)) {
    text += words.slice(at, start) + says
    at = end
  }
  return text + words.slice(at)
}

/** The lengths in the text of a measure, such as `8 × 6 in`; the text itself when it is no length. */
function valueOfText(text: string): string {
  const [literal, ...more] = literalsIn(text)
  return literal && more.length === 0 && literal.start === 0 && literal.end === text.length
    ? valueOfLiteral(literal)
    : text
}

/** A literal by what it comes to. */
const valueOfLiteral = ({ kind, lengths }: Literal): string =>
  `<${kind === 'length' && lengths.length > 1 ? 'list' : kind} ${lengths.map((length) => length.toFraction()).join(' ')}>`
