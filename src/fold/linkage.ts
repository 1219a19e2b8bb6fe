import type { Linearised } from './least-squares.ts'
import type { Reached } from './rings.ts'

/**
 * Bars in a plane with pins between them. Where link k bends by `folds[k]` (radians, 0 flat, π shut), bar b stands
 * turned against bar a by `base` plus `bend` times that.
 */
export interface Linkage {
  readonly bars: number
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
  readonly ua: number
  readonly ub: number
  readonly base: number
  readonly bend: number
}

/** Point `ua` of bar a comes to lie on a point of bar b. */
export interface Rest {
  readonly a: number
  readonly ua: number
  readonly b: number
}

/** Where each bar is: its turn, and the place of its point u = 0. The first bar lies along x. */
export interface Bars {
  readonly turn: readonly number[]
  readonly x: readonly number[]
  readonly y: readonly number[]
}

export function barsAt({ bars, joints, reached }: Linkage, folds: readonly number[], first = 0): Bars {
  const [turn, x, y] = [[first], [0], [0]]
  for (let bar = 1; bar < bars; bar++) {
    const step = reached[bar]
    const joint = joints[step?.link ?? -1]
    if (!step || !joint) continue
    const change = joint.base + joint.bend * (folds[step.link] ?? 0)
    const forwards = joint.b === bar
    const from = turn[step.from] ?? 0
    const angle = forwards ? from + change : from - change
    const [there, here] = forwards ? [joint.ua, joint.ub] : [joint.ub, joint.ua]
    turn[bar] = angle
    x[bar] = (x[step.from] ?? 0) + there * Math.cos(from) - here * Math.cos(angle)
    y[bar] = (y[step.from] ?? 0) + there * Math.sin(from) - here * Math.sin(angle)
  }
  return { turn, x, y }
}

export const pointAt = ({ turn, x, y }: Bars, bar: number, u: number): readonly [number, number] => [
  (x[bar] ?? 0) + u * Math.cos(turn[bar] ?? 0),
  (y[bar] ?? 0) + u * Math.sin(turn[bar] ?? 0),
]

/** What is asked of the folds: rings that close, joints held at an angle, rests that touch. */
export interface Demands {
  readonly held: readonly { readonly joint: number; readonly fold: number }[]
  /** For each rest the point u on bar b; empty when rests do not matter yet. */
  readonly reach: readonly number[]
}

/** The loop equations and demands at `folds`, with derivatives by all folds. Gaps are in units of `scale`. */
export function equationsAt(
  linkage: Linkage,
  folds: readonly number[],
  { held, reach }: Demands,
): Linearised {
  const { joints, closing, rests, scale, reached } = linkage
  const bars = barsAt(linkage, folds)
  const residual: number[] = []
  const jacobian: number[][] = []
  const add = (value: number): number[] => {
    const row = joints.map(() => 0)
    residual.push(value)
    jacobian.push(row)
    return row
  }
  /** Adds to the rows how fast a point that rides on `bar` moves, and `turning` how fast the bar turns. */
  const addMotion = (
    bar: number,
    [px, py]: readonly [number, number],
    sign: number,
    rows: number[][],
  ): void => {
    const [turning, right, up] = rows
    for (let step = reached[bar], at = bar; step; at = step.from, step = reached[step.from]) {
      const joint = joints[step.link]
      if (!joint) return
      const [jx, jy] = pointAt(bars, joint.a, joint.ua)
      const speed = sign * joint.bend * (joint.b === at ? 1 : -1)
      for (const [row, part] of [
        [turning, 1],
        [right, -(py - jy) / scale],
        [up, (px - jx) / scale],
      ] as const)
        if (row) row[step.link] = (row[step.link] ?? 0) + speed * part
    }
  }
  for (const k of closing) {
    const joint = joints[k]
    if (!joint) continue
    const { a, b, ua, ub, base, bend } = joint
    const [pa, pb] = [pointAt(bars, a, ua), pointAt(bars, b, ub)]
    const turned = (bars.turn[b] ?? 0) - (bars.turn[a] ?? 0) - base - bend * (folds[k] ?? 0)
    const rows = [
      add(turned - 2 * Math.PI * Math.round(turned / (2 * Math.PI))),
      add((pb[0] - pa[0]) / scale),
      add((pb[1] - pa[1]) / scale),
    ]
    addMotion(b, pb, 1, rows)
    addMotion(a, pa, -1, rows)
    const [turning] = rows
    if (turning) turning[k] = (turning[k] ?? 0) - bend
  }
  for (const [k, u] of reach.entries()) {
    const rest = rests[k]
    if (!rest) continue
    const [pa, pb] = [pointAt(bars, rest.a, rest.ua), pointAt(bars, rest.b, u)]
    const rows = [[], add((pa[0] - pb[0]) / scale), add((pa[1] - pb[1]) / scale)]
    addMotion(rest.a, pa, 1, rows)
    addMotion(rest.b, pb, -1, rows)
  }
  for (const { joint, fold } of held) add((folds[joint] ?? 0) - fold)[joint] = 1
  return { residual, jacobian }
}
