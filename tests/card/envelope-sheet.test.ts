import { describe, expect, test } from 'vitest'
import type { Envelope } from '../../src/card/card.ts'
import type { Polygon } from '../../src/card/structure.ts'
import { numberIn, toMm } from '../../src/length/length.ts'
import { cardOf, measure } from './block.ts'

/*
 * Envelopes folded here with floats, by mirroring points at the creases, and never with the program's own folding.
 */

type Spot = readonly [x: number, y: number]
const spots = (polygon: Polygon): Spot[] => polygon.map(({ x, y }) => [toMm(x), toMm(y)])
const area = (ring: readonly Spot[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length] as Spot
    return sum + (x * nextY - nextX * y) / 2
  }, 0)

const mirror =
  ([ax, ay]: Spot, [bx, by]: Spot) =>
  ([x, y]: Spot): Spot => {
    const [dx, dy] = [bx - ax, by - ay]
    const t = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)
    return [2 * (ax + t * dx) - x, 2 * (ay + t * dy) - y]
  }

/** Positive inside, by the distance from the nearest edge; the polygons here are convex. */
const depthIn = (ring: readonly Spot[], [x, y]: Spot): number => {
  const turn = Math.sign(area(ring))
  return Math.min(
    ...ring.map(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length] as Spot
      return (turn * ((bx - ax) * (y - ay) - (by - ay) * (x - ax))) / Math.hypot(bx - ax, by - ay)
    }),
  )
}

function folded({ structure }: Envelope) {
  const rings = new Map(structure.plates.map(({ name, outline }) => [name, spots(outline)]))
  const flaps = structure.hinges.map(({ between: [, name], line }) => {
    const [from, to] = spots([line.from, line.to]) as [Spot, Spot]
    return [name, (rings.get(name) ?? []).map(mirror(from, to))] as const
  })
  return { front: rings.get('front') ?? [], flaps: new Map(flaps), sheetRings: rings }
}

/** A lattice of points in the front, none of them on an edge. */
function pointsIn(front: readonly Spot[]): Spot[] {
  const [a, b, , d] = front as [Spot, Spot, Spot, Spot]
  const steps = [...Array(24).keys()].map((i) => (i + 0.5) / 24)
  return steps.flatMap((s) =>
    steps.map(
      (t): Spot => [
        a[0] + s * (b[0] - a[0]) + t * (d[0] - a[0]),
        a[1] + s * (b[1] - a[1]) + t * (d[1] - a[1]),
      ],
    ),
  )
}

const envelopeOf = (closed: string, envelope: string, unit: 'in' | 'mm' = 'in'): Envelope => {
  const card = cardOf(`fold: side\nclosed: ${closed}\nenvelope: ${envelope}`, { unit })
  if (!card.envelope) throw new Error('no envelope')
  return card.envelope
}

const cases = (['in', 'mm'] as const).flatMap((unit) =>
  ['7 x 5 in', 'A6 portrait', '6 x 6 in', '8 x 6 in'].flatMap((closed) =>
    ['diagonal', '{make: diagonal, seam: 1/4 in, clearance: 1/8 in}', 'side seam'].map(
      (envelope) => [closed, envelope, unit] as const,
    ),
  ),
)

describe.each(cases)('%s, %s, %s', (closed, make, unit) => {
  const envelope = envelopeOf(closed, make, unit)
  const { front, flaps, sheetRings } = folded(envelope)
  const sheet = toMm(envelope.sheet.width) * toMm(envelope.sheet.height)

  test('the panels and what is cut away make up the sheet', () => {
    const panels = [...sheetRings.values()].map(area)
    expect(panels.every((x) => x > 0)).toBe(true)
    const [d, f] = [0.375, 0.75].map((x) => (unit === 'in' ? x * 25.4 : Math.ceil(x * 25.4))) as [
      number,
      number,
    ]
    const seam = make.includes('1/4') ? (unit === 'in' ? 6.35 : 7) : d
    const taper = unit === 'in' ? 6.35 : 6
    const [w, h] = [toMm(envelope.inside.width), toMm(envelope.inside.height)]
    // Diagonal: four triangles, each 2·d wide and d deep. Side seam: two corners of f × (h - f), two of f × 2·f, and the
    // four tapers.
    const away = make === 'side seam' ? 2 * f * (h - f) + 2 * f * 2 * f + 2 * f * taper : 4 * seam * seam
    expect(panels.reduce((a, b) => a + b, 0)).toBeCloseTo(sheet - away, 6)
    expect(w).toBeGreaterThan(0)
  })

  test('the front is a rectangle that has the size inside', () => {
    const [a, b, c, d] = front as [Spot, Spot, Spot, Spot]
    const far = (p: Spot, q: Spot) => Math.hypot(p[0] - q[0], p[1] - q[1])
    expect(far(a, c)).toBeCloseTo(far(b, d), 9)
    const sides = [far(a, b), far(a, d)].sort((x, y) => x - y)
    const inside = [toMm(envelope.inside.width), toMm(envelope.inside.height)].sort((x, y) => x - y)
    for (const [i, side] of sides.entries()) {
      expect(side).toBeGreaterThanOrEqual((inside[i] ?? 0) - 1e-9)
      expect(side).toBeLessThan((inside[i] ?? 0) + (unit === 'in' ? 25.4 / 16 : 1))
    }
  })

  test('shut, the flaps cover the front and stay inside it', () => {
    for (const spot of pointsIn(front))
      expect(Math.max(...[...flaps.values()].map((flap) => depthIn(flap, spot)))).toBeGreaterThan(0)
    for (const flap of flaps.values())
      for (const corner of flap) expect(depthIn(front, corner)).toBeGreaterThan(-1e-9)
  })

  test('each seam bonds two flaps that lie on each other, and carries points as folding does', () => {
    const { structure } = envelope
    for (const { plate, onto, at, turn, over, side } of structure.bonds) {
      expect([turn, over, side]).toEqual([180, false, 'back'])
      const hinge = (name: string) => {
        const { line } = structure.hinges.find(({ between }) => between[1] === name) ?? { line: undefined }
        if (!line) throw new Error(name)
        return mirror(...(spots([line.from, line.to]) as [Spot, Spot]))
      }
      for (const [x, y] of sheetRings.get(plate) ?? []) {
        const carried: Spot = [toMm(at.x) - x, toMm(at.y) - y]
        const [there, here] = [hinge(onto)(carried), hinge(plate)([x, y])]
        expect(Math.hypot(there[0] - here[0], there[1] - here[1])).toBeLessThan(1e-9)
      }
      const [one, other] = [flaps.get(plate) ?? [], flaps.get(onto) ?? []]
      expect(pointsIn(front).some((p) => depthIn(one, p) > 0 && depthIn(other, p) > 0)).toBe(true)
    }
  })

  test('the flaps fold in the named order, and every crease but the first two has a seam or stays open', () => {
    const [left, right, bottom, top] = envelope.folding
    expect([left, right, top]).toEqual(['left flap', 'right flap', 'top flap'])
    expect([...flaps.keys()].sort()).toEqual([...envelope.folding].sort())
    expect(envelope.structure.bonds.map(({ plate, onto }) => [plate, onto])).toEqual([
      [bottom, left],
      [bottom, right],
    ])
  })
})

// By hand, a 7 × 5 card: p = 5.25/√2 + 3/8 = 4.087, on the ruler 4 1/8; S = 12.5/√2 + 3/4 = 9.589, on the ruler 9 5/8,
// which would leave (9 5/8 - 4 1/2)·√2 = 7.248 of 7 1/4, so the next mark.
test('where a 7 × 5 card has its cuts', () => {
  const { structure, sheet, score } = envelopeOf('7 x 5 in', 'diagonal')
  expect([numberIn(sheet.width, 'in'), numberIn(score, 'in')]).toEqual([9.6875, 4.125])
  const cuts = structure.pieces[0]?.cuts.map(({ from, to }) =>
    [from.x, from.y, to.x, to.y].map((x) => numberIn(x, 'in')),
  )
  const [p, d, s] = [4.125, 0.375, 9.6875]
  expect(cuts).toHaveLength(8)
  expect(cuts).toEqual(
    expect.arrayContaining([
      [p - d, 0, p, d],
      [p, d, p + d, 0],
      [s, s - p - d, s - d, s - p],
      [d, p, 0, p - d],
    ]),
  )
})

test('a lesson can say the order in which the flaps fold', () => {
  const card = cardOf('fold: side\nclosed: 7 x 5 in\nenvelope: side seam')
  expect(measure(card, 'envelope.folding')).toBe('left flap, right flap, back and top flap')
})
