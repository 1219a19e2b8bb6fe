import { describe, expect, test } from 'vitest'
import type { Fold } from '../../src/card/structure.ts'
import type { Pose } from '../../src/fold/pose.ts'
import { foldCard } from '../../src/fold/prove.ts'
import data from '../data/folding-vertices.json' with { type: 'json' }
import { troublesIn } from './checker.ts'
import { vertex } from './vertex.ts'

const foldsOf = (letters: readonly string[]): Fold[] =>
  letters.map((m) => (m === 'M' ? 'mountain' : 'valley'))

/** Every way to make each crease a mountain or a valley. */
const assignments = (creases: number): Fold[][] =>
  Array.from({ length: 2 ** creases }, (_, bits) =>
    Array.from({ length: creases }, (_, i): Fold => ((bits >> i) & 1 ? 'mountain' : 'valley')),
  )

/** Two creases in one line are two between the same two plates, which is one crease of a card: not a vertex of it. */
const vertices = data.vertices.filter(({ sectors_deg: sectors }) => sectors.length > 2)

describe.each(vertices)('$id', ({ sectors_deg: sectors, flat_foldable, flat_assignments }) => {
  test(`folds flat in ${flat_assignments} ways (Kawasaki–Justin, and counts by the source)`, () => {
    const flat = assignments(sectors.length).filter((folds) => foldCard(vertex({ sectors, folds })).closed)
    expect(flat.length).toBe(flat_assignments)
    expect(flat.length > 0).toBe(flat_foldable)
    for (const folds of flat) {
      const mountains = folds.filter((fold) => fold === 'mountain').length
      // Maekawa
      expect(Math.abs(2 * mountains - sectors.length)).toBe(2)
    }
  })

  test('a refusal says why', () => {
    const folds = sectors.map((_, i): Fold => (i === 0 ? 'mountain' : 'valley'))
    const { closed, findings } = foldCard(vertex({ sectors, folds }))
    if (closed) return expect(findings).toEqual([])
    expect(findings.map(({ rule }) => rule)).toEqual([flat_foldable ? 'layers-cross' : 'folds-flat'])
    if (flat_foldable) return
    expect(findings[0]?.message).toMatch(
      sectors.length % 2 === 1 ? /odd number/ : /adds up to [\d.]+° and the others to [\d.]+°/,
    )
  })
})

test.each(data.assignments.filter(({ sectors_deg }) => sectors_deg.length > 2))(
  '$id: $sectors_deg as $assignment',
  ({ sectors_deg: sectors, assignment, flat_foldable }) => {
    const { closed } = foldCard(vertex({ sectors, folds: foldsOf(assignment) }))
    expect(closed !== undefined).toBe(flat_foldable)
  },
)

/** How far plates either side of a crease are bent against each other, in degrees. */
function bend(pose: Pose | undefined, one: string, other: string): number {
  const [a, b] = [pose?.get(one)?.normal, pose?.get(other)?.normal]
  if (!a || !b) throw new Error('no pose')
  const cos = a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
  return (Math.acos(Math.max(-1, Math.min(1, cos))) * 180) / Math.PI
}

test.each(data.degree4_motion)('$id', (figure) => {
  const { sectors_deg: sectors, major_fold_deg, expect_minor_fold_deg, tolerance } = figure
  // Sectors α, 180 - α, 180 - α, α with α below 90°: the first and the third crease are in one line, and the minor pair.
  const folds = foldsOf(['M', 'V', 'V', 'V'])
  const [major, minor] = [
    ['s0', 's1'],
    ['s3', 's0'],
  ] as const
  const structure = vertex({ sectors, folds, lead: { crease: 1, degrees: major_fold_deg } })
  const { standing, findings, freedom } = foldCard(structure)
  expect(findings).toEqual([])
  expect(freedom).toBe(1)
  expect(troublesIn(structure, standing?.pose ?? new Map(), { gap: 1e-5, thickness: 0 })).toEqual([])
  expect(bend(standing?.pose, ...major)).toBeCloseTo(major_fold_deg, 6)
  expect(Math.abs(bend(standing?.pose, ...minor) - expect_minor_fold_deg)).toBeLessThan(
    Math.max(tolerance, 1e-5),
  )
})
