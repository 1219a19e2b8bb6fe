import { equationsAt } from './equations.ts'
import { rankOf } from './least-squares.ts'
import type { Linkage } from './linkage.ts'
import type { Moment } from './opening.ts'
import type { Rings } from './rings.ts'
import { solveFolds } from './solve.ts'

/** Creases are opened by about this much to see how their ring moves. */
const trial = Math.PI / 9

export interface Freedom {
  /** How many fold angles can be chosen freely. */
  readonly all: number
  /** Of the joints of each group of rings. */
  readonly inGroup: ReadonlyMap<number, number>
}

/**
 * How many fold angles can be chosen freely: joints less the rank of the loop equations. Shut and wide open the bodies
 * of a ring lie on one line and the rank is too small, so it is taken half way. Rests count where they touch.
 */
export function freedomOf(
  linkage: Linkage,
  { groupOf }: Rings,
  shut: readonly number[],
  moments: readonly Moment[],
): Freedom {
  const { joints } = linkage
  const groups = [...new Set(groupOf)].filter((group) => group >= 0)
  if (groups.length === 0 && linkage.rests.length === 0) return { all: joints.length, inGroup: new Map() }
  const last = moments.at(-1)
  const middle = moments[Math.floor(moments.length / 2)] ?? { share: 0, folds: shut, reach: [] }
  const jacobianAt = ({ folds, reach }: Moment) => equationsAt(linkage, folds, { held: [], reach }).jacobian
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
  const half = jacobianAt({ ...middle, folds: opened })
  const ranks = [rankOf(half)]
  if (last && last.reach.length > 0) ranks.push(rankOf(jacobianAt(last)))
  const inGroup = groups.map((group): [number, number] => {
    const own = groupOf.flatMap((other, joint) => (other === group ? [joint] : []))
    const rank = rankOf(half.map((row) => own.map((joint) => row[joint] ?? 0)))
    return [group, own.length - rank]
  })
  return { all: joints.length - Math.max(...ranks), inGroup: new Map(inGroup) }
}

const moves = (
  groupOf: readonly number[],
  group: number,
  shut: readonly number[],
  { folds }: Moment,
): boolean =>
  groupOf.some((own, joint) => own === group && Math.abs((folds[joint] ?? 0) - (shut[joint] ?? 0)) > 1e-9)
