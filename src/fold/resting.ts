import type { Linkage } from './linkage.ts'
import { type Course, type Drives, follow, type Moment, type Opening, opened } from './opening.ts'
import { blend, farthest, solveFolds } from './solve.ts'

const backwards = Array.from({ length: 23 }, (_, i) => 1 - (i + 1) / 24)
const raised = Array.from({ length: 8 }, (_, i) => (i + 1) / 8)

/**
 * Opens a card that comes to stand by edges that rest on other plates.
 *
 * The standing state is solved first. Then the rests slide back to where they lie when the card is shut: as a hand
 * would do it the other way round, the plates are raised folded on each other, and then spread.
 */
export function openByResting(
  linkage: Linkage,
  shut: readonly number[],
  moving: readonly number[],
  drives: Drives,
): Opening | undefined {
  const course: Course = (share) => ({
    held: drives,
    reach: linkage.rests.map(() => share),
  })
  const spread: Course = () => ({ held: [], reach: [] })
  for (const by of [60, 90, 45, 120, 30, 150]) {
    const folds = solveFolds(linkage, moving, opened(shut, moving, (by * Math.PI) / 180), course(1))
    if (!folds) continue
    const standing: Moment = { share: 1, folds, reach: course(1).reach }
    const sliding = [...follow(linkage, moving, course, standing, backwards).reverse(), standing]
    const [touching = standing] = sliding
    const rising = raised.flatMap((share): Moment[] => {
      const guess = blend(shut, touching.folds, share)
      const solved = solveFolds(linkage, moving, guess, spread(share))
      return solved ? [{ share, folds: solved, reach: [] }] : []
    })
    if (rising.length < raised.length) continue
    const moments = [{ share: 0, folds: shut, reach: [] }, ...rising.slice(0, -1), ...sliding]
    return { moments: paced(moments), led: [], arrives: true }
  }
  return undefined
}

/** Shares in proportion to how much the folds change. */
function paced(moments: readonly Moment[]): Moment[] {
  const ways = moments.map(({ folds }, i) => farthest(folds, moments[i - 1]?.folds ?? folds))
  const whole = ways.reduce((sum, way) => sum + way, 0) || 1
  let done = 0
  return moments.map((moment, i) => {
    done += ways[i] ?? 0
    return { ...moment, share: i === moments.length - 1 ? 1 : done / whole }
  })
}
