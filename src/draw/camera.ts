import type { Vector } from '../fold/pose.ts'
import type { Spot } from './num.ts'
import { dot } from './space.ts'

/** Parallel projection: equal lengths look equal wherever they are. */
export interface Camera {
  /** Unit vectors in space: to the right and up on the paper, and from the card towards the eye. */
  readonly right: Vector
  readonly up: Vector
  readonly eye: Vector
}

/** An eye to the left of the front by `turn` and above it by `rise`, in degrees. */
export function cameraAt(turn: number, rise: number): Camera {
  const [a, b] = [(turn * Math.PI) / 180, (rise * Math.PI) / 180]
  const [sa, ca, sb, cb] = [Math.sin(a), Math.cos(a), Math.sin(b), Math.cos(b)]
  return { right: [ca, 0, sa], up: [sa * sb, cb, -ca * sb], eye: [-sa * cb, sb, ca * cb] }
}

/** From the front left and slightly above, the same everywhere. */
export const frontLeft = cameraAt(36, 19)

/** Where a point falls on the paper at a scale, y downwards. */
export const project = (camera: Camera, p: Vector, scale: number): Spot => [
  dot(p, camera.right) * scale,
  -dot(p, camera.up) * scale,
]
