import type { Display } from '../card/structure.ts'
import type { Assembly } from './assembly.ts'
import type { Motion } from './motion.ts'
import { boxRound, moved, viewOf } from './place.ts'
import type { Closed, Placement, Pose, Proof, Vector } from './pose.ts'
import { named, posing } from './posing.ts'

/**
 * Reads the standing card, and what lies between, off the motion. The card stands on the table, centred sideways and in
 * depth; its sizes are those of the sheets without their thickness, before it is turned to be seen well.
 *
 * @param shut how far each link is bent in the shut card, in radians.
 */
export function standingOf(
  assembly: Assembly,
  { linkage, freedom, foldsAt }: Motion,
  display: Display,
  closed: Closed,
  shut: readonly number[],
): Pick<Proof, 'standing' | 'freedom' | 'between'> {
  const { plates, model } = assembly
  const shown = plates.findIndex(({ index }) => index === model.shown)
  const { bare, laid } = posing(assembly, linkage, closed, shut)
  const seenBy = (all: readonly Placement[], seen: Display): Placement[] => {
    const base = all[shown]
    return base ? all.map(viewOf(base, seen)) : [...all]
  }
  const end = foldsAt(1)
  const [x, , z] = end ? middleOf(boxRound(assembly, seenBy(bare(end), display))) : [0, 0, 0]
  const poseOf = (folds: readonly number[]): Pose => {
    const all = seenBy(laid(folds), display)
    const [low] = boxRound(assembly, all)
    return named(
      assembly,
      all.map((at) => moved(at, [-x, -low[1], -z])),
    )
  }
  const between = (share: number): Pose | undefined => {
    const folds = foldsAt(share)
    return folds && poseOf(folds)
  }
  if (!end) return { freedom, between }
  const [low, high] = boxRound(assembly, seenBy(bare(end), { ...display, turn: 0 }))
  const [width, height, depth] = [high[0] - low[0], high[1] - low[1], high[2] - low[2]]
  return { standing: { width, height, depth, pose: poseOf(end) }, freedom, between }
}

const middleOf = ([low, high]: readonly [Vector, Vector]): Vector => [
  (low[0] + high[0]) / 2,
  (low[1] + high[1]) / 2,
  (low[2] + high[2]) / 2,
]
