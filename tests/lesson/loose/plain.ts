import { visit } from 'unist-util-visit'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'

const signs: Readonly<Record<string, string>> = { '1/2': '½', '1/4': '¼', '3/4': '¾' }

/** How a hand may write a measure that is printed as `5 7/8 in`, `8 × 6 in` or `149 mm`. */
export const spellings: readonly ((printed: string) => string)[] = [
  (printed) => printed,
  (printed) => printed.replace(/ in$/, '"').replace(' × ', ' x '),
  (printed) => printed.replace(/ in$/, ' inches').replace(' × ', ' by '),
  (printed) =>
    printed.replace(
      /(\d )?\b(1\/2|1\/4|3\/4)\b/g,
      (_, whole = '', part) => whole.trim() + (signs[part] ?? part),
    ),
]

/** A measure of a lesson that is a length, as it is printed. */
export interface Printed {
  readonly start: number
  readonly end: number
  readonly value: string
  readonly text: string
}

/** The lengths, sizes and lists of a lesson, in the order of the file. */
export function printedLengths(text: string): Printed[] {
  const measures: Printed[] = []
  visit(fillLesson(readLesson(text)).tree, 'measure', ({ position, value, text: printed = '' }) => {
    const [start, end] = [position?.start.offset ?? 0, position?.end.offset ?? 0]
    if (/^[\d/. ,×and]+ (?:in|mm)$/.test(printed)) measures.push({ start, end, value, text: printed })
  })
  return measures.sort((a, b) => a.start - b.start)
}

/**
 * A lesson with its lengths written out as plain numbers.
 *
 * @returns the text, and where each number starts in it.
 */
export function untied(
  text: string,
  lengths: readonly Printed[],
  write: (printed: string, index: number) => string,
): { plain: string; offsets: number[] } {
  let at = 0
  let plain = ''
  const offsets = lengths.map((length, i) => {
    plain += text.slice(at, length.start)
    const offset = plain.length
    plain += write(length.text, i)
    at = length.end
    return offset
  })
  return { plain: plain + text.slice(at), offsets }
}
