import { fitInside } from '../../length/grid.ts'
import type { Length, Size } from '../../length/length.ts'
import { same } from '../../length/length.ts'
import { marksOf } from './candidates.ts'
import { does, type Limit } from './limit.ts'
import type { Trial, Trials } from './trial.ts'
import { useOf, type Whole } from './whole.ts'

/**
 * A card of other proportions whose piece uses the sheet whole. Looked for along both sides, one after the other: first
 * the widths at which the piece has the right width, with the height as it is, then the heights likewise, and every
 * pair of them is proven. For a piece whose width follows from the card's height too, one may be missed.
 *
 * @param from the size that comes nearest.
 */
export function otherShape(
  from: Size,
  whole: Whole,
  trialAt: Trials,
  limits: readonly Limit[],
  grid: Length,
): Trial | undefined {
  const marks = marksOf(grid)
  const { width: w0, height: h0 } = whole.sheet.size
  const target: Size = { width: fitInside(w0, grid), height: fitInside(h0, grid) }
  const sides = (size: Size): Size | undefined =>
    trialAt(size)
      .draft()
      ?.pieces.find(({ name }) => name === whole.piece)?.size
  const right = (sizeAt: (x: Length) => Size, side: keyof Size): Length[] =>
    marks.filter((x) => {
      const size = sides(sizeAt(x))
      return size !== undefined && same(size[side], target[side])
    })
  const widths = right((width) => ({ width, height: from.height }), 'width')
  const [width = from.width] = widths
  const heights = widths.length > 0 ? right((height) => ({ width, height }), 'height') : []
  const pairs = widths.flatMap((w) => heights.map((height): Trial => trialAt({ width: w, height })))
  return pairs.findLast((trial) => does(trial, limits) && useOf(whole, trial.proven().pieces, grid)?.whole)
}
