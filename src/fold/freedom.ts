import { rankOf } from './least-squares.ts'
import { equationsAt, type Linkage } from './linkage.ts'
import type { Moment } from './opening.ts'
import type { Rings } from './rings.ts'
import { solveFolds } from './solve.ts'

/** Creases are opened by about this much to see how their ring moves. */
const trial = Math.PI / 9

/**
 * How many fold angles can be chosen freely: joints less the rank of the loop equations. Shut and wide open the bars
 * of a ring lie on one line and the rank is too small, so the largest along the way counts. Rests count where they
 * touch.
 */
export function freedomOf(
  linkage: Linkage,
  { groupOf }: Rings,
  shut: readonly number[],
  moments: readonly Moment[],
): number {
  const { joints } = linkage
  if (linkage.closing.length === 0 && linkage.rests.length === 0) return joints.length
  const last = moments.at(-1)
  const middle = moments[Math.floor(moments.length / 2)] ?? { share: 0, folds: shut, reach: [] }
  const rank = ({ folds, reach }: Moment): number =>
    rankOf(equationsAt(linkage, folds, { held: [], reach }).jacobian)
  // Rings that the display leaves shut are opened a little, unevenly, since only the rank is asked for.
  const idle = groupOf.flatMap((group, joint) =>
    group >= 0 && !moves(groupOf, group, shut, middle) ? [joint] : [],
  )
  const guess = middle.folds.map((fold, joint) => {
    const by = trial * (0.5 + ((joint * 0.618) % 1))
    return idle.includes(joint) ? (fold > 1 ? fold - by : fold + by) : fold
  })
  const opened =
    (idle.length > 0 && solveFolds(linkage, idle, guess, { held: [], reach: [] })) || middle.folds
  const ranks = [rank({ ...middle, folds: opened })]
  if (last && last.reach.length > 0) ranks.push(rank(last))
  return joints.length - Math.max(...ranks)
}

const moves = (
  groupOf: readonly number[],
  group: number,
  shut: readonly number[],
  { folds }: Moment,
): boolean =>
  groupOf.some((own, joint) => own === group && Math.abs((folds[joint] ?? 0) - (shut[joint] ?? 0)) > 1e-9)
