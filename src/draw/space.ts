import type { Placement, Vector } from '../fold/pose.ts'
import type { Flat } from './plane.ts'

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
export const less = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
export const plusTimes = (a: Vector, b: Vector, k: number): Vector => [
  a[0] + b[0] * k,
  a[1] + b[1] * k,
  a[2] + b[2] * k,
]
export const mix3 = (a: Vector, b: Vector, t: number): Vector => plusTimes(a, less(b, a), t)

/** Where a point of a flat piece is in space, in mm. */
export const inSpace = ({ origin, right, up }: Placement, [x, y]: Flat): Vector =>
  plusTimes(plusTimes(origin, right, x), up, y)
