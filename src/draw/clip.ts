import { covers } from '../fold/assembly.ts'
import type { Box } from './box.ts'

type Point2 = readonly [number, number]

/**
 * The part of a loop on the side where `height` is not negative (Sutherland and Hodgman). `height` must be linear.
 *
 * @param mix the point at a share of the way from one to the other; `leaving` when the loop goes out there, so that what
 * follows is the cut and no edge of the loop.
 */
export function clipLoop<P>(
  loop: readonly P[],
  height: (p: P) => number,
  mix: (a: P, b: P, share: number, leaving: boolean) => P,
): P[] {
  return loop.flatMap((p, i) => {
    const next = loop[(i + 1) % loop.length] as P
    const [here, there] = [height(p), height(next)]
    if (here >= 0 && there < 0) return [...(here > 0 ? [p] : []), mix(p, next, here / (here - there), true)]
    if (here < 0 && there > 0) return [mix(p, next, here / (here - there), false)]
    return here < 0 ? [] : [p]
  })
}

export const mix2 = (a: Point2, b: Point2, t: number): Point2 => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
]

/** The part of a loop inside a box; `top` is the smaller y or the larger, whichever way y runs. */
export function clipToBox(loop: readonly Point2[], { left, right, top, bottom }: Box): Point2[] {
  const [low, high] = [Math.min(top, bottom), Math.max(top, bottom)]
  const sides: ((p: Point2) => number)[] = [
    (p) => p[0] - left,
    (p) => right - p[0],
    (p) => p[1] - low,
    (p) => high - p[1],
  ]
  return sides.reduce<readonly Point2[]>((rest, side) => clipLoop(rest, side, mix2), loop) as Point2[]
}

/** The part of a straight line inside a box, or nothing. */
export function clipLine(
  [a, b]: readonly [Point2, Point2],
  { left, right, top, bottom }: Box,
): [Point2, Point2] | undefined {
  const [low, high] = [Math.min(top, bottom), Math.max(top, bottom)]
  let [enter, leave] = [0, 1]
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  for (const [step, room] of [
    [-dx, a[0] - left],
    [dx, right - a[0]],
    [-dy, a[1] - low],
    [dy, high - a[1]],
  ] as const) {
    if (step === 0 && room < -1e-9) return undefined
    if (step < 0) enter = Math.max(enter, room / step)
    if (step > 0) leave = Math.min(leave, room / step)
  }
  return leave - enter > 1e-9 ? [mix2(a, b, enter), mix2(a, b, leave)] : undefined
}

/** The parts of a straight line outside a convex loop, whichever way round it runs. */
export function lineOutside([a, b]: readonly [Point2, Point2], loop: readonly Point2[]): [Point2, Point2][] {
  const turn = (p: Point2, q: Point2, r: Point2) =>
    (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
  const way = Math.sign(
    loop.reduce((sum, p, i) => sum + turn([0, 0], p, loop[(i + 1) % loop.length] ?? p), 0),
  )
  let [enter, leave] = [0, 1]
  for (const [i, p] of loop.entries()) {
    const q = loop[(i + 1) % loop.length] ?? p
    const [here, there] = [way * turn(p, q, a), way * turn(p, q, b)]
    if (here < 1e-9 && there < 1e-9) return [[a, b]]
    if (here < 0) enter = Math.max(enter, here / (here - there))
    if (there < 0) leave = Math.min(leave, here / (here - there))
  }
  if (leave - enter < 1e-9) return [[a, b]]
  return [
    ...(enter > 1e-9 ? [[a, mix2(a, b, enter)] as [Point2, Point2]] : []),
    ...(leave < 1 - 1e-9 ? [[mix2(a, b, leave), b] as [Point2, Point2]] : []),
  ]
}

/** The parts of a straight line inside loops of any shape; where two of them overlap, a window, it is outside. */
export function lineInside(
  [a, b]: readonly [Point2, Point2],
  loops: readonly (readonly Point2[])[],
): [Point2, Point2][] {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const shares = loops.flatMap((loop) =>
    loop.flatMap((p, i) => {
      const q = loop[(i + 1) % loop.length] ?? p
      const [ex, ey] = [q[0] - p[0], q[1] - p[1]]
      const turn = dx * ey - dy * ex
      if (turn === 0) return []
      const [fx, fy] = [p[0] - a[0], p[1] - a[1]]
      const [t, u] = [(fx * ey - fy * ex) / turn, (fx * dy - fy * dx) / turn]
      return t > 0 && t < 1 && u >= 0 && u <= 1 ? [t] : []
    }),
  )
  const stops = [0, ...shares.sort((s, t) => s - t), 1]
  return stops.slice(1).flatMap((to, i): [Point2, Point2][] => {
    const from = stops[i] ?? 0
    const [x, y] = mix2(a, b, (from + to) / 2)
    return to - from > 1e-9 && covers(loops, x, y) ? [[mix2(a, b, from), mix2(a, b, to)]] : []
  })
}
