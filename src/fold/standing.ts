import type { Display } from '../card/structure.ts'
import { barsAt } from './linkage.ts'
import type { Motion } from './motion.ts'
import { boxRound, moved, placeInSection, viewOf } from './place.ts'
import type { Placement, Pose, Proof, Vector } from './pose.ts'
import type { Shut } from './shut.ts'
import { stackingOf } from './stacking.ts'

/**
 * Reads the standing card, and what lies between, off the motion. The card stands on the table, centred sideways and in
 * depth; its sizes are those of the sheets without their thickness, before it is turned to be seen well.
 */
export function standingOf(
  shut: Shut,
  { linkage, freedom, foldsAt }: Motion,
  display: Display,
): Pick<Proof, 'standing' | 'freedom' | 'between'> {
  const { section } = shut.layout
  const { plates, model } = section
  const shown = plates.findIndex(({ index }) => index === model.shown)
  const flat = plates.map(() => 0)
  const place = (folds: readonly number[], heights: readonly number[], seen: Display): Placement[] => {
    const placed = placeInSection(section, barsAt(linkage, folds), heights)
    const base = placed[shown]
    return base ? placed.map(viewOf(base, seen)) : placed
  }
  const heights = stackingOf(shut)
  const end = foldsAt(1)
  const centre = end ? middleOf(boxRound(section, place(end, flat, display))) : [0, 0, 0]
  const poseOf = (folds: readonly number[]): Pose => {
    const placed = place(folds, heights, display)
    const [low] = boxRound(section, placed)
    const by: Vector = [-(centre[0] ?? 0), -low[1], -(centre[2] ?? 0)]
    return new Map(placed.map((at, i) => [model.plates[plates[i]?.index ?? 0]?.name ?? '', moved(at, by)]))
  }
  const between = (share: number): Pose | undefined => {
    const folds = foldsAt(share)
    return folds && poseOf(folds)
  }
  if (!end) return { freedom, between }
  const [low, high] = boxRound(section, place(end, flat, { ...display, turn: 0 }))
  const [width, height, depth] = [high[0] - low[0], high[1] - low[1], high[2] - low[2]]
  return { standing: { width, height, depth, pose: poseOf(end) }, freedom, between }
}

const middleOf = ([low, high]: readonly [Vector, Vector]): Vector => [
  (low[0] + high[0]) / 2,
  (low[1] + high[1]) / 2,
  (low[2] + high[2]) / 2,
]
