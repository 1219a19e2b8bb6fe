import type { Action } from './action.ts'

const plainLength = /[\d½¼¾⅛⅜⅝⅞]\s*(?:in|mm|cm|inch(?:es)?|["″])(?!\p{L})/u

/** Whether words, such as those of an action, say a length such as `5 1/2 in`, and not by a measure. */
export function hasPlainLength({
  sentence: { words, measures },
  start,
  end,
}: Pick<Action, 'sentence' | 'start' | 'end'>): boolean {
  const own = measures.filter((measure) => measure.start >= start && measure.end <= end)
  const rest = own.reduceRight(
    (text, measure) => `${text.slice(0, measure.start - start)}…${text.slice(measure.end - start)}`,
    words.slice(start, end),
  )
  return plainLength.test(rest)
}
