import { describe, expect, test } from 'vitest'
import { equationsAt } from '../../src/fold/equations.ts'
import { settle } from '../../src/fold/least-squares.ts'
import { framesAt, type Joint, type Linkage } from '../../src/fold/linkage.ts'
import data from '../data/linkage.json' with { type: 'json' }

/** Bars along x with pins across them, that turn from x towards z: against the axis y. */
const pin = (a: number, b: number, xa: number, xb: number): Joint => ({
  a,
  b,
  lineA: { at: [xa, 0], way: [0, 1] },
  lineB: { at: [xb, 0], way: [0, 1] },
  base: 0,
  bend: -1,
})

/** Ground, input, coupler, output; the ground lies along x, the input turns about its start. */
function fourBar({ input, coupler, output, ground }: (typeof data.cases)[number]): Linkage {
  return {
    bodies: 4,
    joints: [pin(0, 1, 0, 0), pin(1, 2, input, 0), pin(2, 3, coupler, output), pin(0, 3, ground, 0)],
    reached: [undefined, { link: 0, from: 0 }, { link: 1, from: 1 }, { link: 2, from: 2 }],
    closing: [3],
    rests: [],
    scale: ground,
  }
}

const degrees = (radians: number) => (radians * 180) / Math.PI
const round = (angle: number) => ((((angle + 180) % 360) + 360) % 360) - 180

describe.each(data.cases)('$id', (figure) => {
  const linkage = fourBar(figure)
  const held = [{ joint: 0, fold: (figure.input_deg * Math.PI) / 180 }]
  const starts = Array.from({ length: 8 }, (_, i) => ((i - 4) * Math.PI) / 4 + 0.1)
  const solutions = starts.flatMap((x) =>
    starts.flatMap((y) => {
      const guess = [held[0]?.fold ?? 0, x, y, 0]
      const folds = settle((x) => equationsAt(linkage, x, { held, reach: [] }), guess)
      if (!folds) return []
      const [, , coupler = 0, output = 0] = framesAt(linkage, folds).map(({ right }) =>
        degrees(Math.atan2(right[2], right[0])),
      )
      return [{ coupler, output }]
    }),
  )
  test('every solution found is one of the two of the source', () => {
    const apart = (x: number, y: number) => Math.abs(round(x - y))
    const matches = solutions.map(({ coupler, output }) =>
      figure.expect_both_branches.findIndex(
        (branch) =>
          apart(coupler, branch.coupler_deg) < figure.tolerance_deg &&
          apart(output, branch.output_deg) < figure.tolerance_deg,
      ),
    )
    expect(new Set(matches)).toEqual(new Set(figure.expect_both_branches.keys()))
  })
})

describe('derivatives agree with differences', () => {
  const flat = fourBar(data.cases[0] as (typeof data.cases)[number])
  const skew = flat.joints.map((joint, i) => ({
    ...joint,
    lineA: { at: joint.lineA.at, way: [Math.sin(i), Math.cos(i)] as const },
    base: i % 2 === 0 ? Math.PI : 0,
  }))
  const edge = [
    [20, 5],
    [30, 9],
  ] as const
  const lineAt = (share: number) => ({ nx: Math.cos(share), ny: Math.sin(share), c: 7 + share })
  test.each([
    ['parallel', flat.joints],
    ['skew', skew],
  ])('%s', (_, joints) => {
    const linkage = { ...flat, joints, rests: [{ a: 3, edge, b: 1, lineAt }] }
    const folds = [0.7, -0.4, 0.9, 1.1]
    const demands = { held: [{ joint: 1, fold: 0.2 }], reach: [0.4] }
    const { residual, jacobian } = equationsAt(linkage, folds, demands)
    const step = 1e-6
    for (const joint of folds.keys()) {
      const nearby = equationsAt(linkage, folds.with(joint, (folds[joint] ?? 0) + step), demands).residual
      for (const [i, r] of residual.entries())
        expect(((nearby[i] ?? 0) - r) / step).toBeCloseTo(jacobian[i]?.[joint] ?? Number.NaN, 4)
    }
  })
})
