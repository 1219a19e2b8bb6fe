import type { Placement, Vector } from './pose.ts'
import type { Reached } from './rings.ts'
import { along, atHome, sum } from './space.ts'

/** A point of a body's flat coordinates, in mm. */
export type Spot = readonly [x: number, y: number]

/**
 * Rigid bodies in space with hinges between them. Where joint k bends by `folds[k]` (radians, 0 flat, π folded), body b
 * stands turned against body a about the joint's line by `base` plus `bend` times that, right-handed.
 */
export interface Linkage {
  readonly bodies: number
  readonly joints: readonly Joint[]
  readonly reached: readonly (Reached | undefined)[]
  /** Joints that close a ring. */
  readonly closing: readonly number[]
  readonly rests: readonly Rest[]
  /** A length to measure gaps against, so that they compare with angles. */
  readonly scale: number
}

export interface Joint {
  readonly a: number
  readonly b: number
  readonly lineA: Hinge
  readonly lineB: Hinge
  readonly base: number
  readonly bend: number
}

/** A line on a body: a point of it, and its direction, of length 1. */
export interface Hinge {
  readonly at: Spot
  readonly way: Spot
}

/** An edge of body a that comes to lie on a line of body b; which line depends on how far the rest has come. */
export interface Rest {
  readonly a: number
  readonly edge: readonly [Spot, Spot]
  readonly b: number
  readonly lineAt: (share: number) => Level
}

/** The line of all points (x, y) with `x * nx + y * ny = c`. */
export interface Level {
  readonly nx: number
  readonly ny: number
  readonly c: number
}

/** Where the bodies are at these folds. The first one stays at home. */
export function framesAt({ bodies, joints, reached }: Linkage, folds: readonly number[]): Placement[] {
  const frames = [atHome]
  for (let body = 1; body < bodies; body++) {
    const step = reached[body]
    const joint = joints[step?.link ?? -1]
    if (step && joint)
      frames[body] = hung(joint, frames[step.from] ?? atHome, joint.b === body, folds[step.link] ?? 0)
  }
  return frames
}

/** The frame of the body that hangs by a joint on the one at `from`: body b if `forwards`, else body a. */
export function hung(joint: Joint, from: Placement, forwards: boolean, fold: number): Placement {
  const { lineA, lineB, base, bend } = joint
  const [there, here] = forwards ? [lineA, lineB] : [lineB, lineA]
  const angle = (base + bend * fold) * (forwards ? 1 : -1)
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const way = along(from, ...there.way)
  const left = along(from, -there.way[1], there.way[0])
  const lifted = sum([left[0] * cos, left[1] * cos, left[2] * cos], from.normal, sin)
  const normal = sum([from.normal[0] * cos, from.normal[1] * cos, from.normal[2] * cos], left, -sin)
  // Its own axes, by how its line runs across them.
  const [x, y] = here.way
  const right = sum([way[0] * x, way[1] * x, way[2] * x], lifted, -y)
  const up = sum([way[0] * y, way[1] * y, way[2] * y], lifted, x)
  const start = sum(from.origin, along(from, ...there.at))
  const origin: Vector = sum(sum(start, right, -here.at[0]), up, -here.at[1])
  return { origin, right, up, normal }
}
