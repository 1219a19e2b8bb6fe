import type { Card } from '../../card/card.ts'
import { part, same } from '../../length/length.ts'
import type { Course } from './course.ts'
import type { Mark } from './marks.ts'
import { hasPlainLength } from './plain-length.ts'

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
    const isAll = action.kind === 'score' && (elsewhere.test(words) || hasPlainLength(action))
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
