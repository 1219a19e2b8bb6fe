import type { Linearised } from './least-squares.ts'
import { framesAt, hung, type Linkage } from './linkage.ts'
import type { Placement, Vector } from './pose.ts'
import { along, atHome, cross, dot, spotAt, sum } from './space.ts'

/** What is asked of the folds: rings that close, joints held at an angle, rests that touch. */
export interface Demands {
  readonly held: readonly { readonly joint: number; readonly fold: number }[]
  /** For each rest how far it has come, from 0 to 1; empty when rests do not matter yet. */
  readonly reach: readonly number[]
}

/**
 * The loop equations and demands at `folds`, with derivatives by all folds. A ring closes when three points of the body
 * behind its last joint are where that joint would put them: nine equations of which at most six are independent. Gaps
 * are in units of `scale`.
 */
export function equationsAt(
  linkage: Linkage,
  folds: readonly number[],
  { held, reach }: Demands,
): Linearised {
  const { joints, closing, rests, scale } = linkage
  const frames = framesAt(linkage, folds)
  const residual: number[] = []
  const jacobian: number[][] = []
  const speeds = (body: number, point: Vector): Vector[] => speedsOf(linkage, frames, body, point)
  const add = (value: number, row: readonly number[]): void => {
    residual.push(value)
    jacobian.push([...row])
  }
  for (const k of closing) {
    const joint = joints[k]
    if (!joint) continue
    const [a, b] = [frames[joint.a] ?? atHome, frames[joint.b] ?? atHome]
    const wanted = hung(joint, a, true, folds[k] ?? 0)
    const axis = along(a, ...joint.lineA.way)
    const start = spotAt(a, ...joint.lineA.at)
    const [[x, y], [dx, dy]] = [joint.lineB.at, joint.lineB.way]
    for (const [px, py] of [
      [x, y],
      [x + dx * scale, y + dy * scale],
      [x - dy * scale, y + dx * scale],
    ] as const) {
      const [is, should] = [spotAt(b, px, py), spotAt(wanted, px, py)]
      const [mine, theirs] = [speeds(joint.b, is), speeds(joint.a, should)]
      const own = cross(axis, sum(should, start, -1))
      for (const i of [0, 1, 2] as const)
        add(
          (is[i] - should[i]) / scale,
          joints.map(
            (_, j) =>
              ((mine[j]?.[i] ?? 0) - (theirs[j]?.[i] ?? 0) - (j === k ? joint.bend * own[i] : 0)) / scale,
          ),
        )
    }
  }
  for (const [k, share] of reach.entries()) {
    const rest = rests[k]
    if (!rest) continue
    const [a, b] = [frames[rest.a] ?? atHome, frames[rest.b] ?? atHome]
    const { nx, ny, c } = rest.lineAt(share)
    const across = along(b, nx, ny)
    for (const spot of rest.edge) {
      const point = spotAt(a, ...spot)
      const way = sum(point, b.origin, -1)
      const [mine, theirs] = [speeds(rest.a, point), speeds(rest.b, point)]
      for (const [axis, value] of [
        [b.normal, dot(way, b.normal)],
        [across, dot(way, across) - c],
      ] as const)
        add(
          value / scale,
          joints.map((_, j) => dot(axis, sum(mine[j] ?? [0, 0, 0], theirs[j] ?? [0, 0, 0], -1)) / scale),
        )
    }
  }
  for (const { joint, fold } of held)
    add(
      (folds[joint] ?? 0) - fold,
      joints.map((_, j) => Number(j === joint)),
    )
  return { residual, jacobian }
}

/** How fast a point that rides on a body moves with each fold. Joints that do not carry it have no entry. */
function speedsOf(
  { joints, reached }: Linkage,
  frames: readonly Placement[],
  body: number,
  point: Vector,
): Vector[] {
  const speeds: Vector[] = []
  for (let at = body, step = reached[body]; step; at = step.from, step = reached[step.from]) {
    const joint = joints[step.link]
    const a = frames[joint?.a ?? -1]
    if (!joint || !a) break
    const speed = cross(along(a, ...joint.lineA.way), sum(point, spotAt(a, ...joint.lineA.at), -1))
    const sign = joint.bend * (joint.b === at ? 1 : -1)
    speeds[step.link] = [sign * speed[0], sign * speed[1], sign * speed[2]]
  }
  return speeds
}
