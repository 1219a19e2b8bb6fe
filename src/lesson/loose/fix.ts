import { makeSource } from '../source.ts'
import { editFor, hasNewErrors, lookAt, makeEdits, type Placed, type Read, read } from './edits.ts'
import type { LooseNumber } from './loose-numbers.ts'
import { printedWords } from './same-words.ts'

/** A lesson with the names in place of those plain numbers whose meaning is sure. */
export interface Fixed {
  readonly text: string
  /** What was done, with places in the lesson as it was. */
  readonly placed: readonly Placed[]
  readonly left: readonly LooseNumber[]
}

/** A name that has come into a sentence may make the number beside it sure, but not for ever. */
const mostRounds = 5

/**
 * Puts names in the place of the plain numbers of a lesson, but only those that are sure, and only where the print in the
 * lesson's own size and unit says the same as before. Everything else in the file is kept, character by character.
 * Doing it twice changes nothing the second time.
 */
export function fixLesson(text: string): Fixed {
  let at = read(text)
  let placed: readonly Placed[] = []
  for (let rounds = 0; ; rounds++) {
    const { words, front } = lookAt(at)
    const done = rounds < mostRounds ? placeSure(at, words) : { after: at, placed: [] }
    if (done.placed.length === 0) {
      const told = front.filter(({ proposal }) => proposal !== undefined)
      return { text: at.lesson.source.text, placed, left: [...told, ...words] }
    }
    placed = [...placed, ...done.placed.map((one) => movedBack(one, placed, text))]
    at = done.after
  }
}

function placeSure(before: Read, words: readonly LooseNumber[]): { after: Read; placed: readonly Placed[] } {
  const { text } = before.lesson.source
  const sure = words.flatMap((number): Placed[] => {
    const { proposal } = number
    const edit = proposal?.confidence === 'sure' ? editFor(number, proposal, text) : undefined
    return proposal && edit ? [{ number, proposal, edit }] : []
  })
  if (sure.length === 0) return { after: before, placed: [] }
  const said = wordsOf(before)
  return makeEdits(before, sure, (after) => !hasNewErrors(before, after) && wordsOf(after) === said)
}

const wordsOf = ({ filled, lesson }: Read): string => printedWords(filled, lesson).join('\n')

/** A change of a later round with its place in the text before all rounds. */
function movedBack(one: Placed, earlier: readonly Placed[], text: string): Placed {
  if (earlier.length === 0) return one
  let by = 0
  for (const { edit } of [...earlier].sort((a, b) => a.edit.start - b.edit.start))
    if (edit.start + by < one.edit.start) by += edit.text.length - (edit.end - edit.start)
  const edit = { ...one.edit, start: one.edit.start - by, end: one.edit.end - by }
  return { ...one, edit, number: { ...one.number, place: makeSource(text).place(edit.start, edit.end) } }
}
