import { describe, expect, test } from 'vitest'
import type { Pose, Vector } from '../../src/fold/pose.ts'
import { foldCard } from '../../src/fold/prove.ts'
import data from '../data/pop-ups.json' with { type: 'json' }
import { inSpace, troublesIn } from './checker.ts'
import { vFoldOf } from './v-piece.ts'

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const size = (a: Vector) => Math.hypot(...a)
const degrees = (y: number, x: number) => (Math.atan2(y, x) * 180) / Math.PI

/** From one direction to another, in degrees, the short way round. */
const turnBetween = (a: number, b: number) => ((((b - a + 180) % 360) + 360) % 360) - 180

const placed = (pose: Pose | undefined, name: string) => {
  const at = pose?.get(name)
  if (!at) throw new Error(`${name} is nowhere`)
  return at
}

/** The angle from the gutter to the crease between the wings, towards where the pages open, in degrees. */
function creaseAngle(pose: Pose | undefined): number {
  const [one, two, wing] = ['page 1', 'page 2', 'right wing'].map((name) => placed(pose, name)) as [
    ReturnType<typeof placed>,
    ReturnType<typeof placed>,
    ReturnType<typeof placed>,
  ]
  // Between the pages: half way between their far edges, and half way between their faces.
  const middle = [0, 1, 2].map(
    (i) => (one.right[i] ?? 0) - (two.right[i] ?? 0) + (one.normal[i] ?? 0) + (two.normal[i] ?? 0),
  ) as unknown as Vector
  return degrees(dot(wing.up, middle) / size(middle), dot(wing.up, one.up))
}

/** Without those that lie flat on the open pages (s = g): there both answers are one, or any will do. */
const pieces = data.v_fold.filter(
  ({ glue_line_to_gutter_deg: g, glue_line_to_panel_crease_deg: s, opening_deg }) =>
    s > g || opening_deg < 180,
)

describe.each(pieces)('$id', (figure) => {
  const { glue_line_to_gutter_deg: g, glue_line_to_panel_crease_deg: s, opening_deg, tolerance } = figure
  const half = { g, s, length: 60 }
  const structure = vFoldOf({
    left: half,
    right: half,
    height: 80,
    crease: 'outwards',
    opening: opening_deg,
  })
  const { closed, standing: open, findings } = foldCard(structure)
  test('the crease between the wings stands as the source has it', () => {
    expect(findings).toEqual([])
    // Of the two answers the one that lies in the card when it is shut.
    const expected = Math.max(...(figure.expect_crease_to_gutter_deg ?? []))
    const pose = opening_deg === 0 ? closed?.pose : open?.pose
    expect(Math.abs(turnBetween(creaseAngle(pose), expected))).toBeLessThan(tolerance)
    expect(troublesIn(structure, pose ?? new Map(), { gap: 1e-5, thickness: 0 })).toEqual([])
  })
})

// With s = g the relation of the source, cos g · cos p + sin g · sin p · cos(w/2) = cos s, is tan(p/2) = tan g · cos(w/2).
test.each([45, 60, 75])('a piece as wide as its glue lines, %d°, all but lies flat on pages that do', (g) => {
  const half = { g, s: g, length: 60 }
  const structure = vFoldOf({ left: half, right: half, height: 80, crease: 'outwards', opening: 178 })
  const expected = 2 * degrees(Math.tan((g * Math.PI) / 180) * Math.cos((89 * Math.PI) / 180), 1)
  const { standing: open, findings } = foldCard(structure)
  expect(findings).toEqual([])
  expect(creaseAngle(open?.pose)).toBeCloseTo(expected, 5)
})

describe.each(data.v_fold_spheres)('$id', (figure) => {
  const { A, B_shut: tip, C_shut, D, opening_deg: opening, tolerance } = figure
  const polar = ([x = 0, y = 0]: number[]) => {
    const [dx, dy] = [x - (A[0] ?? 0), y - (A[1] ?? 0)]
    return { length: Math.hypot(dx, dy), degrees: degrees(dx, dy) }
  }
  const height = polar(tip).length
  const half = (glued: number[]) => {
    const line = polar(glued)
    return { g: line.degrees, s: line.degrees - polar(tip).degrees, length: line.length }
  }
  const [left, right] = [half(C_shut), half(D)]
  const isSymmetric = String(C_shut) === String(D)
  /** The tip as page 1 sees it: away from the gutter, along it, and up. */
  const tipAt = (crease: 'outwards' | 'inwards') => {
    const structure = vFoldOf({ left, right, height, crease, opening })
    const { standing, findings } = foldCard(structure)
    if (!standing) return { findings }
    expect(troublesIn(structure, standing.pose, { gap: tolerance, thickness: 0 })).toEqual([])
    const [page, wing] = [placed(standing.pose, 'page 1'), placed(standing.pose, 'right wing')]
    const way = inSpace(wing, [0, height]).map((x, i) => x - (page.origin[i] ?? 0)) as unknown as Vector
    return { findings, tip: [page.right, page.up, page.normal].map((axis) => dot(way, axis)) }
  }
  // Both wings before their glue lines, as the source has them shut; and both beyond, if that closes too.
  const creases = isSymmetric ? (['outwards', 'inwards'] as const) : (['inwards'] as const)

  test('the tip is where the three spheres meet, or the card does not open so far', () => {
    const expected = figure.expect_B ?? []
    for (const crease of creases) {
      const { findings, tip: got } = tipAt(crease)
      if (expected.length === 0) {
        expect(findings.map(({ rule }) => rule)).toContain('does-not-stand')
        continue
      }
      expect(findings).toEqual([])
      const off = expected.map((point) => Math.hypot(...point.map((x, i) => x - (got?.[i] ?? 0))))
      // The first is the one beyond the glue lines.
      expect(off[crease === 'outwards' ? 0 : 1]).toBeLessThan(2 * tolerance)
    }
  })
})
