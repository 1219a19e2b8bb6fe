import { describe, expect, test } from 'vitest'
import type { Pose, Vector } from '../../src/fold/pose.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { mm, toMm } from '../../src/length/length.ts'
import data from '../data/pop-ups.json' with { type: 'json' }
import { card, point, rectangle, strip } from './build.ts'
import { popUp } from './cards.ts'
import { inSpace, troublesIn } from './checker.ts'

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

/** The ridge from the gutter: along page 1, and up from its face. `at` is where the ridge is on the tent's piece. */
function ridgeOf(pose: Pose | undefined, { page, c }: { page: number; c: number }): number[] {
  const [page1, b] = [pose?.get('page 1'), pose?.get('b')]
  if (!page1 || !b) throw new Error('no pose')
  const [gutter, ridge] = [inSpace(page1, [page, 0]), inSpace(b, [10 + c, 0])]
  const way: Vector = [ridge[0] - gutter[0], ridge[1] - gutter[1], ridge[2] - gutter[2]]
  return [dot(way, page1.right), dot(way, page1.normal)]
}

const close = (got: number[], expected: number[], tolerance: number) => {
  for (const [i, x] of expected.entries())
    expect(Math.abs((got[i] ?? Number.NaN) - x)).toBeLessThan(tolerance)
}

describe.each(data.parallelogram)('$id', (figure) => {
  const { on_page1: d1, on_page2: d2, page, opening_deg: degrees, tolerance } = figure
  const spec = { a: d1, b: d2, c: d1, d: d2, page, degrees }
  const structure = popUp(spec)
  const { closed, standing, findings, freedom } = foldCard(structure)
  test('the edge of the box is where the source has it', () => {
    expect(findings).toEqual([])
    close(ridgeOf(standing?.pose, { page, c: d1 }), figure.expect_edge_xy, tolerance)
    expect(troublesIn(structure, standing?.pose ?? new Map(), { gap: tolerance, thickness: 0 })).toEqual([])
    expect(freedom).toBe(1)
  })
  test('shut it reaches as far, and stays inside the page if it should', () => {
    const reach = Math.max(figure.expect_shut_reach, page)
    expect(toMm(closed?.size.width ?? mm(0))).toBeCloseTo(reach, 9)
    expect(reach <= page).toBe(figure.stays_inside_when_shut)
  })
})

const quadrilaterals = data.quadrilateral.map((figure) => {
  const { A_page1: a, B: b, C: c, D_page2: d, page, opening_deg: degrees } = figure
  return { ...figure, spec: { a, b, c, d, page, degrees } }
})

test.each(quadrilaterals)('$id shuts if A + B = C + D', ({ spec, folds_flat_shut }) => {
  const { closed, findings } = foldCard(popUp(spec))
  expect(closed !== undefined).toBe(folds_flat_shut)
  if (!folds_flat_shut) expect(findings.map((f) => f.rule)).toEqual(['folds-flat'])
})

describe.each(quadrilaterals.filter((figure) => figure.folds_flat_shut))('$id', (figure) => {
  const { standing, findings } = foldCard(popUp(figure.spec))
  test('the ridge is where the source has it', () => {
    expect(findings.map((f) => f.rule)).toEqual(figure.expect_ridge_xy ? [] : ['does-not-stand'])
    if (!figure.expect_ridge_xy) return
    const [x = 0, y = 0] = ridgeOf(standing?.pose, figure.spec)
    // Wide open, both branches are as far from the gutter, one above the pages and one below. Opened from shut, it is
    // the one above; the source lists the other.
    const [ex = 0, ey = 0] = figure.expect_ridge_xy
    close([x, y], [ex, figure.opening_deg === 180 ? Math.abs(ey) : ey], figure.tolerance)
  })
  test('opens to 180° if A + D ≤ B + C', () => {
    const wide = foldCard(popUp({ ...figure.spec, degrees: 180 }))
    expect(wide.standing !== undefined).toBe(figure.lies_open_180)
  })
})

/** A box between two slits of a folded sheet: its pages are not convex, and its spine is in two parts. */
function boxStep({ deep = 30, high = 50, degrees = 90, inwards = false }) {
  const [wall, ridge] = inwards ? (['mountain', 'valley'] as const) : (['valley', 'mountain'] as const)
  const panels = [
    ['left', mm(100)],
    ['right', mm(100)],
  ] as const
  const flat = strip({ panels, folds: 'V', across: mm(100) })
  const at = (x: number, y: number) => point(mm(x), mm(y))
  const level = (x: number, y0: number, y1: number) => ({ from: at(x, y0), to: at(x, y1) })
  const plate = (name: string, outline: ReturnType<typeof at>[]) => ({
    name,
    piece: 'base',
    outline,
    holes: [],
  })
  const [left, edge, right] = [100 - deep, 100 + high - deep, 100 + high]
  const band = (from: number, to: number) => rectangle(mm(from), mm(30), mm(to - from), mm(30))
  const notch = (outer: number, inner: number) => [
    at(outer, 0),
    at(100, 0),
    at(100, 30),
    at(inner, 30),
    at(inner, 60),
    at(100, 60),
    at(100, 100),
    at(outer, 100),
  ]
  return card({
    parts: [
      {
        pieces: flat.pieces,
        plates: [
          plate('left', notch(0, left)),
          plate('right', notch(200, right)),
          { name: 'top', piece: 'base', outline: band(left, edge), holes: [] },
          { name: 'front', piece: 'base', outline: band(edge, right), holes: [] },
        ],
        hinges: [
          { between: ['left', 'right'], line: level(100, 0, 30), fold: 'valley' },
          { between: ['left', 'right'], line: level(100, 60, 100), fold: 'valley' },
          { between: ['left', 'top'], line: level(left, 30, 60), fold: wall },
          { between: ['top', 'front'], line: level(edge, 30, 60), fold: ridge },
          { between: ['front', 'right'], line: level(right, 30, 60), fold: wall },
        ],
      },
    ],
    plate: 'right',
    angles: [['left', 'right', 180 - degrees]],
  })
}

test.each([
  [30, 50, 90],
  [40, 20, 120],
  [25, 25, 45],
])('a box %d deep and %d high, cut from the pages, at %d°', (deep, high, degrees) => {
  const structure = boxStep({ deep, high, degrees })
  const { closed, standing, findings, freedom } = foldCard(structure)
  expect(findings).toEqual([])
  expect(freedom).toBe(1)
  expect(toMm(closed?.size.width ?? mm(0))).toBe(100)
  expect(closed && troublesIn(structure, closed.pose, { gap: 1e-6, thickness: 0 })).toEqual([])
  expect(standing && troublesIn(structure, standing.pose, { gap: 1e-5, thickness: 0 })).toEqual([])
  // The parallelogram on the right page has sides high (on the page) and deep (along the other page).
  const right = standing?.pose.get('right')
  const front = standing?.pose.get('front')
  if (!right || !front) throw new Error('does not stand')
  const [gutter, edge] = [inSpace(right, [100, 30]), inSpace(front, [100 + high - deep, 30])]
  const way: Vector = [edge[0] - gutter[0], edge[1] - gutter[1], edge[2] - gutter[2]]
  const angle = (degrees * Math.PI) / 180
  close(
    [dot(way, right.right), dot(way, right.normal)],
    [high + deep * Math.cos(angle), deep * Math.sin(angle)],
    1e-5,
  )
})

test('a box whose depth and height are more than the page sticks out of the shut card by the rest', () => {
  const { closed, findings } = foldCard(boxStep({ deep: 70, high: 60, degrees: 90 }))
  expect(findings).toEqual([])
  expect(toMm(closed?.size.width ?? mm(0))).toBe(130)
})

test('a box scored the wrong way round cannot shut, and lying open is no way to be shut', () => {
  const { closed, findings } = foldCard(boxStep({ inwards: true }))
  expect(closed).toBeUndefined()
  expect(findings.map((f) => f.rule)).toEqual(['layers-cross'])
})
