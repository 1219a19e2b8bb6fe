import type { Assembly } from './assembly.ts'
import { framesAt, type Linkage } from './linkage.ts'
import { placed } from './place.ts'
import type { Closed, Placement, Pose } from './pose.ts'
import { settled } from './settled.ts'
import { stackingOf } from './stacking.ts'

/** Turns folds into places of the plates in space, with the first body at home. */
export interface Posing {
  /** Without their thickness. */
  readonly bare: (folds: readonly number[]) => Placement[]
  /** As they lie on one another. */
  readonly laid: (folds: readonly number[]) => Placement[]
}

/** @param shut how far each link is bent in the shut card, in radians. */
export function posing(
  assembly: Assembly,
  linkage: Linkage,
  closed: Closed,
  shut: readonly number[],
): Posing {
  const flat = assembly.plates.map(() => 0)
  const heights = stackingOf(assembly)
  return {
    bare: (folds) => placed(assembly, framesAt(linkage, folds), flat),
    laid: (folds) =>
      placed(assembly, framesAt(linkage, folds), settled(assembly, heights, closed, shut, folds)),
  }
}

/** Places of the plates of an assembly, by their names. */
export const named = ({ plates, model }: Assembly, all: readonly Placement[]): Pose =>
  new Map(all.map((at, i) => [model.plates[plates[i]?.index ?? 0]?.name ?? '', at]))
