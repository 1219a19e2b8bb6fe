import type { Placement, Vector } from '../fold/pose.ts'
import { dot, spotAt, sum } from '../fold/space.ts'
import type { Flat } from './plane.ts'

export { dot }

export const less = (a: Vector, b: Vector): Vector => sum(a, b, -1)
export const mix3 = (a: Vector, b: Vector, t: number): Vector => sum(a, less(b, a), t)

/** Where a point of a flat piece is in space, in mm. */
export const inSpace = (placement: Placement, [x, y]: Flat): Vector => spotAt(placement, x, y)
