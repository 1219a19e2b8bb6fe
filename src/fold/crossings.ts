import type { Assembly } from './assembly.ts'
import { framesAt, type Linkage } from './linkage.ts'
import { boxAround, loopsOf, placed } from './place.ts'
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
  const loops = placements.map((at, i) => loopsOf(assembly, i, at))
  const boxes = loops.map(([outline = []]) => boxAround(outline))
  return pairs.flatMap(([i, j]): Crossing[] => {
    const [one, other] = [placements[i], placements[j]]
    if (!one || !other || !meet(boxes[i], boxes[j])) return []
    const line = cross(one.normal, other.normal)
    const sine = Math.hypot(...line)
    if (sine < flat) return []
    const way: Vector = [line[0] / sine, line[1] / sine, line[2] / sine]
    const [mine, theirs] = [side(loops[i] ?? [], other, way), side(loops[j] ?? [], one, way)]
    const both = [...mine.sections, ...theirs.sections].reduce(overlap)
    if (both.every(([from, to]) => to - from < touch)) return []
    // What is on the smaller side of the other one, measured along the plate itself.
    const [byOne, byOther] = [mine.smaller / sine, theirs.smaller / sine]
    if (Math.min(byOne, byOther) < touch) return []
    return [byOne <= byOther ? { through: i, wall: j, by: byOne } : { through: j, wall: i, by: byOther }]
  })
}

type Stretch = readonly [from: number, to: number]

/** How a plate lies to the plane of another: how far its smaller part reaches, and where it is cut a hair off either side. */
function side(loops: readonly (readonly Vector[])[], plane: Placement, way: Vector) {
  const heights = loops.map((loop) => loop.map((p) => dot(sum(p, plane.origin, -1), plane.normal)))
  const outer = heights[0] ?? []
  const cut = (level: number): Stretch[] => {
    const ends = loops.flatMap((loop, k) =>
      loop.flatMap((from, i) => {
        const next = (i + 1) % loop.length
        const [a, b] = [(heights[k]?.[i] ?? 0) - level, (heights[k]?.[next] ?? 0) - level]
        if (a > 0 === b > 0) return []
        return [dot(sum(from, sum(loop[next] ?? from, from, -1), a / (a - b)), way)]
      }),
    )
    const sorted = ends.sort((a, b) => a - b)
    return sorted.flatMap((from, i): Stretch[] => (i % 2 === 0 ? [[from, sorted[i + 1] ?? from]] : []))
  }
  return {
    smaller: Math.min(Math.max(...outer), -Math.min(...outer)),
    sections: [cut(touch / 4), cut(-touch / 4)],
  }
}

const overlap = (one: readonly Stretch[], other: readonly Stretch[]): Stretch[] =>
  one.flatMap(([from, to]) =>
    other.flatMap(([start, end]): Stretch[] =>
      Math.max(from, start) < Math.min(to, end) ? [[Math.max(from, start), Math.min(to, end)]] : [],
    ),
  )

type Box = ReturnType<typeof boxAround>

const meet = (a: Box | undefined, b: Box | undefined): boolean =>
  a !== undefined &&
  b !== undefined &&
  ([0, 1, 2] as const).every((k) => a[0][k] < b[1][k] - touch && b[0][k] < a[1][k] - touch)
