import { fitInside, mustCover, nearest } from '../../length/grid.ts'
import { inches, type Length, over, plus, type Size, shorter, times } from '../../length/length.ts'
import { type Question, QuestionError } from './question.ts'

/** No card outside these is looked for: what fingers can still fold, and what a large sheet is cut to. */
export const smallestSide = inches(1)
export const largestSide = inches(24)

/** More marks than this are not gone through: a ruler of 1/64 in has fewer. */
const mostMarks = 2000

/** The sizes that are looked through, the smallest first, and what is the same in all. */
export interface Candidates {
  readonly sizes: readonly Size[]
  readonly keeps: 'proportions' | 'width' | 'height'
}

/**
 * The sizes of the shut card that are looked through: every mark of the ruler for one side. The other is kept, or
 * follows at the nearest mark so that the card keeps its proportions; then the marks are those of the longer side, so
 * that none is passed over.
 *
 * @param own size of the lesson's card.
 * @throws QuestionError when the ruler is too fine, or both sides are given.
 */
export function candidates(own: Size, { wide, high }: Question, grid: Length): Candidates {
  if (wide && high)
    throw new QuestionError(
      '`--wide` and `--high` together leave nothing to look for',
      'Write one of them, or `foldlore check LESSON --closed SIZE`',
    )
  const marks = marksOf(grid)
  const kept = wide ?? high
  if (kept) {
    const side = fitInside(kept, grid)
    if (shorter(side, smallestSide) || shorter(largestSide, side))
      throw new QuestionError(
        'The side that is kept is not from 1 in to 24 in long',
        'Give one between them, such as `--wide "7 in"`',
      )
    return wide
      ? { sizes: marks.map((height) => ({ width: side, height })), keeps: 'width' }
      : { sizes: marks.map((width) => ({ width, height: side })), keeps: 'height' }
  }
  const upright = shorter(own.width, own.height)
  const [long, short] = upright ? [own.height, own.width] : [own.width, own.height]
  const sizes = marks.flatMap((side): Size[] => {
    const other = nearest(times(side, over(short, long)), grid)
    if (shorter(other, smallestSide)) return []
    return [upright ? { width: other, height: side } : { width: side, height: other }]
  })
  return { sizes, keeps: 'proportions' }
}

/** The marks of a ruler between the bounds, the shortest first. */
export function marksOf(grid: Length): Length[] {
  const [first, last] = [mustCover(smallestSide, grid), fitInside(largestSide, grid)]
  const count = over(last.sub(first) as Length, grid).valueOf() + 1
  if (count > mostMarks || count < 1)
    throw new QuestionError(
      `A ruler with ${count < 1 ? 'no' : Math.round(count)} marks from 1 in to 24 in cannot be gone through`,
      'Write for example `--grid "1/16 in"` or `--grid "1 mm"`',
    )
  return Array.from({ length: count }, (_, i) => plus(first, times(grid, i)))
}
