import type { Assembly } from './assembly.ts'
import { framesAt, type Linkage } from './linkage.ts'
import { cornersOf, insideBy, placed } from './place.ts'
import type { Placement, Vector } from './pose.ts'
import { cross, dot, sum } from './space.ts'

/** Less than this, in mm, is a touch and no crossing: hands and paper give way that much. */
const touch = 0.25

/** Planes closer to each other than this (the sine of their angle) are layers, and layers have an order of their own. */
const flat = 0.03

/** Plate `through` runs through plate `wall`. */
export interface Crossing {
  readonly through: number
  readonly wall: number
  /** By how much, in mm: made shorter by this, it would not. */
  readonly by: number
}

/** So many even steps of a movement are looked at. */
const steps = 12

/** The folds at even steps of a way, without those that cannot be reached. */
export const evenly = (foldsAt: (share: number) => readonly number[] | undefined): (readonly number[])[] =>
  Array.from({ length: steps }, (_, i) => foldsAt((i + 1) / steps)).filter((folds) => folds !== undefined)

/** Plates that run through each other at any of the moments: each pair once, at its worst. */
export function crossingsAt(
  assembly: Assembly,
  linkage: Linkage,
  moments: readonly (readonly number[])[],
): Crossing[] {
  const pairs = strangersOf(assembly)
  const bare = assembly.plates.map(() => 0)
  const worst = new Map<string, Crossing>()
  if (pairs.length === 0) return []
  for (const folds of moments)
    for (const crossing of crossingsIn(assembly, placed(assembly, framesAt(linkage, folds), bare), pairs)) {
      const key = [crossing.through, crossing.wall].sort((a, b) => a - b).join()
      if ((worst.get(key)?.by ?? 0) < crossing.by) worst.set(key, crossing)
    }
  return [...worst.values()]
}

/** Pairs of plates that may cross: of different bodies, and not joined by a crease. */
function strangersOf({ plates, links }: Assembly): (readonly [number, number])[] {
  const joined = new Set(links.map(({ p, q }) => `${Math.min(p, q)} ${Math.max(p, q)}`))
  return plates.flatMap(({ body }, i) =>
    plates.flatMap((other, j) =>
      j > i && other.body !== body && !joined.has(`${i} ${j}`) ? [[i, j] as const] : [],
    ),
  )
}

/** Plates that run through each other, each pair once, with whichever of the two needs least to be cut off. */
function crossingsIn(
  assembly: Assembly,
  placements: readonly Placement[],
  pairs: readonly (readonly [number, number])[],
): Crossing[] {
  const corners = placements.map((at, i) => cornersOf(assembly, i, at))
  const boxes = corners.map(boxOf)
  return pairs.flatMap(([i, j]): Crossing[] => {
    const [one, other] = [placements[i], placements[j]]
    if (!one || !other || !meet(boxes[i], boxes[j])) return []
    const sine = Math.hypot(...cross(one.normal, other.normal))
    if (sine < flat) return []
    const found = [
      { through: i, wall: j, at: other },
      { through: j, wall: i, at: one },
    ].flatMap(({ through, wall, at }): Crossing[] => {
      const heights = (corners[through] ?? []).map((p) => dot(sum(p, at.origin, -1), at.normal))
      // What is on the smaller side of the wall, measured along the plate that runs through it.
      const by = Math.min(Math.max(...heights), -Math.min(...heights)) / sine
      return by > touch && pierces(assembly, corners[through] ?? [], heights, wall, at)
        ? [{ through, wall, by }]
        : []
    })
    const [least] = found.sort((a, b) => a.by - b.by)
    return least ? [least] : []
  })
}

/** Whether an edge of a plate goes through the inside of another, and not just past its rim. */
function pierces(
  assembly: Assembly,
  corners: readonly Vector[],
  heights: readonly number[],
  wall: number,
  at: Placement,
): boolean {
  return corners.some((from, i) => {
    const to = corners[(i + 1) % corners.length] ?? from
    const [a, b] = [heights[i] ?? 0, heights[(i + 1) % corners.length] ?? 0]
    if (a * b >= 0 || Math.min(Math.abs(a), Math.abs(b)) < touch / 4) return false
    const spot = sum(from, sum(to, from, -1), a / (a - b))
    const way = sum(spot, at.origin, -1)
    return insideBy(assembly, wall, [dot(way, at.right), dot(way, at.up)]) > touch
  })
}

type Box = readonly [Vector, Vector]

const boxOf = (points: readonly Vector[]): Box => {
  const ends = (pick: (...all: number[]) => number): Vector => [
    pick(...points.map(([x]) => x)),
    pick(...points.map(([, y]) => y)),
    pick(...points.map(([, , z]) => z)),
  ]
  return [ends(Math.min), ends(Math.max)]
}

const meet = (a: Box | undefined, b: Box | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  ([0, 1, 2] as const).every((k) => a[0][k] < b[1][k] - touch && b[0][k] < a[1][k] - touch)
