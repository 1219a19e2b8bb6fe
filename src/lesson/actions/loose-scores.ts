import type { Card } from '../../card/card.ts'
import { part, same } from '../../length/length.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { Action } from './action.ts'
import type { Course } from './course.ts'
import type { Mark } from './marks.ts'
import { plainLength } from './plain-length.ts'

/** Words that leave the place of a score to a figure, or to what has been said of another piece. */
const elsewhere =
  /\b(?:(?:in the )?same (?:way|as|places?|lines?)|likewise|as (?:drawn|shown|marked|before|for|in|on)|alike|like the|templates?|figures?|diagrams?|(?:all|every|each) (?:of )?(?:the )?lines?)\b/i
const halfway = /\bin half\b|\b(?:middle|centre|center)\b/i

/** Tells whether words without a measure say a score: as in another place, by a plain length, or in the middle. */
export function looseScores({
  actions,
  asides,
  pieceOf,
}: Course): (card: Card, piece: string, mark: Mark) => boolean {
  const said = [...actions, ...asides].flatMap((action) => {
    if (action.kind !== 'score' && action.kind !== 'fold') return []
    const words = action.sentence.words.slice(action.start, action.end)
    const isAll =
      action.kind === 'score' && (elsewhere.test(words) || plainLength.test(withoutMeasures(action)))
    const isHalf = halfway.test(words)
    return isAll || isHalf ? [{ objects: action.objects, isAll, isHalf }] : []
  })
  return (card, piece, { at, along }) =>
    said.some(({ objects, isAll, isHalf }) => {
      const isOf = objects.some(({ named }) => named.card === card && pieceOf(named)?.name === piece)
      if (!isOf && objects.length > 0) return false
      if (isAll) return true
      const size = card.structure.pieces.find(({ name }) => name === piece)?.size
      const whole = along === 'width' ? size?.width : size?.height
      return isHalf && at !== undefined && whole !== undefined && same(at, part(whole, 2))
    })
}

const withoutMeasures = ({ sentence: { words, measures }, start, end }: Action): string =>
  measures
    .filter((measure): boolean => measure.start >= start && measure.end <= end)
    .toReversed()
    .reduce((text, measure) => cutOut(text, measure, start), words.slice(start, end))

const cutOut = (text: string, { start, end }: Sentence['measures'][number], from: number): string =>
  `${text.slice(0, start - from)}…${text.slice(end - from)}`
