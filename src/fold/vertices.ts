import type { Finding } from '../length/finding.ts'
import type { Whole } from './affine.ts'
import { type Assembly, covers, type Link } from './assembly.ts'
import { sameSpot, smallestGap } from './layings.ts'
import { namesOf } from './misses.ts'
import type { Rings } from './rings.ts'

/** Angles may differ by this much, in degrees, for errors of rounding. */
const sameAngle = 1e-6

/**
 * Why a card whose creases are not parallel cannot be laid flat. Where the creases of a ring meet in one point, that is
 * because of the angles between them (Kawasaki–Justin: each second one adds up to as much as the others); else its
 * creases do not come together.
 */
export function missesInSpace(assembly: Assembly, rings: Rings): Finding[] {
  const bad = rings.cycles.flatMap((cycle): Finding[] => {
    const angles = anglesOf(assembly, cycle)
    const names = namesOf(assembly, cycle)
    if (!angles) return []
    if (angles.length % 2 === 1)
      return [
        {
          rule: 'folds-flat',
          severity: 'error',
          message: `${angles.length} creases meet in one point between ${names}, and an odd number of them cannot be folded flat`,
          suggestion: 'Add a crease that goes through that point, or leave one out',
        },
      ]
    const sum = (odd: number): number =>
      angles.reduce((all, angle, i) => (i % 2 === odd ? all + angle : all), 0)
    const [one, other] = [sum(0), sum(1)]
    if (Math.abs(one - other) < sameAngle) return []
    return [
      {
        rule: 'folds-flat',
        severity: 'error',
        message: `Where the creases between ${names} meet, every second angle adds up to ${degrees(one)} and the others to ${degrees(other)}, so the card cannot be folded flat`,
        suggestion: `Turn one of the creases by ${degrees(Math.abs(one - other) / 2)}, so that both make the same`,
      },
    ]
  })
  if (bad.length > 0) return bad
  const gap = smallestGap(assembly, rings)
  const by = Number.isFinite(gap) ? `: at best they miss each other by ${Number(gap.toFixed(2))} mm` : ''
  return [
    {
      rule: 'folds-flat',
      severity: 'error',
      message: `When the card is shut, the creases between ${namesOf(assembly, rings.cycles.flat())} do not come together${by}`,
      suggestion: 'Move one of the creases, or stick one of the pieces on elsewhere',
    },
  ]
}

const degrees = (x: number): string => `${Number(x.toFixed(2))}°`

/** The angles that the bodies of a ring take up round the one point where its creases meet; undefined if they do not. */
function anglesOf(assembly: Assembly, cycle: readonly number[]): number[] | undefined {
  const perMm = Number(assembly.model.perMm)
  const ring = inOrder(cycle.flatMap((i) => assembly.links[i] ?? []))
  const corners = ring.flatMap(({ link, next, body }) => {
    const [one, other] = [lineOn(link, body), lineOn(next, body)]
    const meets = crossing(one, other)
    if (!meets) return []
    const [[x0, y0], [x1, y1]] = [one, other].map((line) => wayFrom(meets, line)) as [Whole, Whole]
    const least = (Math.atan2(Math.abs(x0 * y1 - y0 * x1), x0 * x1 + y0 * y1) * 180) / Math.PI
    const between: Whole = [
      x0 / Math.hypot(x0, y0) + x1 / Math.hypot(x1, y1),
      y0 / Math.hypot(x0, y0) + y1 / Math.hypot(x1, y1),
    ]
    const angle = isThere(assembly, body, meets, between) ? least : 360 - least
    return [{ angle, ends: [one, other].map((line) => line.map((end) => distance(meets, end))) }]
  })
  if (corners.length < ring.length || ring.length < 2) return undefined
  const isOnePoint = corners.every(({ ends }, i) => {
    const after = corners[(i + 1) % corners.length]?.ends[0] ?? []
    return after.every((x, k) => Math.abs(x - (ends[1]?.[k] ?? 0)) < sameSpot * perMm)
  })
  return isOnePoint ? corners.map(({ angle }) => angle) : undefined
}

/** Whether a body has paper beside a point, on the way `to`. */
const isThere = ({ plates }: Assembly, body: number, [x, y]: Whole, [dx, dy]: Whole): boolean =>
  plates.some((plate) => plate.body === body && covers(plate.rings, x + dx / 16, y + dy / 16))

/** The links of a ring one after the other, each with the body that lies between it and the next. */
function inOrder(ring: readonly Link[]): { link: Link; next: Link; body: number }[] {
  const left = [...ring]
  const first = left.shift()
  const steps: { link: Link; next: Link; body: number }[] = []
  let link = first
  let body = first?.b ?? 0
  while (link && first) {
    const k = left.findIndex(({ a, b }) => a === body || b === body)
    const next: Link | undefined = k < 0 ? first : left.splice(k, 1)[0]
    if (!next) break
    steps.push({ link, next, body })
    if (next === first) break
    body = next.a === body ? next.b : next.a
    link = next
  }
  return steps
}

const lineOn = ({ a, lineA, lineB }: Link, body: number): Link['lineA'] => (a === body ? lineA : lineB)

const distance = ([x, y]: Whole, [p, q]: Whole): number => Math.hypot(p - x, q - y)

/** From a point along a line, towards its middle. */
const wayFrom = ([x, y]: Whole, [[x0, y0], [x1, y1]]: Link['lineA']): Whole => [
  (x0 + x1) / 2 - x,
  (y0 + y1) / 2 - y,
]

/** Where two lines meet, however far they go on. */
function crossing(
  [[x0, y0], [x1, y1]]: Link['lineA'],
  [[p0, q0], [p1, q1]]: Link['lineA'],
): Whole | undefined {
  const turn = (x1 - x0) * (q1 - q0) - (y1 - y0) * (p1 - p0)
  if (Math.abs(turn) < 1e-9 * Math.hypot(x1 - x0, y1 - y0) * Math.hypot(p1 - p0, q1 - q0)) return undefined
  const s = ((p0 - x0) * (q1 - q0) - (q0 - y0) * (p1 - p0)) / turn
  return [x0 + s * (x1 - x0), y0 + s * (y1 - y0)]
}
