import type { Placement, Vector } from './pose.ts'

/** Vectors and frames in space. */
export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

/** a + k·b */
export const sum = (a: Vector, b: Vector, k = 1): Vector => [
  a[0] + k * b[0],
  a[1] + k * b[1],
  a[2] + k * b[2],
]

export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]

/** A direction of a frame's own plane. */
export const along = ({ right, up }: Placement, x: number, y: number): Vector => [
  right[0] * x + up[0] * y,
  right[1] * x + up[1] * y,
  right[2] * x + up[2] * y,
]

/** Where a flat point of a frame is. */
export const spotAt = (frame: Placement, x: number, y: number): Vector =>
  sum(frame.origin, along(frame, x, y))

export const atHome: Placement = { origin: [0, 0, 0], right: [1, 0, 0], up: [0, 1, 0], normal: [0, 0, 1] }
