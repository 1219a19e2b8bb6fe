import type { Structure } from '../card/structure.ts'
import type { Camera } from './camera.ts'
import { type Face, split } from './face.ts'
import { type Lead, leadOf, seenBy, touching } from './overlap.ts'
import { dot } from './space.ts'
import { type Level, levelsOf } from './stack.ts'

/** More cuts than this, and what is left is sorted by its middle. No card comes near it. */
const mostSplits = 200

/**
 * Faces from the farthest to the nearest: painted in this order, each hides what it should.
 *
 * Faces are compared two by two where their images overlap. A face that passes through another, or is part of a circle
 * (each hides a bit of the next), is split along the other's plane and the parts are sorted instead.
 */
export function paintOrder(faces: readonly Face[], structure: Structure, camera: Camera): Face[] {
  const levels = levelsOf(structure)
  let rest = [...faces]
  for (let splits = 0; splits <= mostSplits; splits++) {
    const { before, crossings } = relation(rest, levels, camera)
    const apart = firstCut(rest, crossings)
    if (!apart) {
      const { order, left } = sorted(rest, before, camera)
      const circle = left.flatMap((i) => left.filter((j) => before[i]?.has(j)).map((j) => [i, j] as const))
      const opened = firstCut(rest, circle)
      if (!opened)
        return [
          ...order,
          ...byMiddle(
            left.map((i) => rest[i] as Face),
            camera,
          ),
        ]
      rest = opened
    } else rest = apart
  }
  return byMiddle(rest, camera)
}

interface Relation {
  /** `before[i]` holds the faces that are painted before face i. */
  readonly before: readonly ReadonlySet<number>[]
  /** Two faces of which each is in front of the other somewhere: they pass through one another. */
  readonly crossings: readonly (readonly [number, number])[]
}

function relation(faces: readonly Face[], levels: ReadonlyMap<string, Level>, camera: Camera): Relation {
  const before = faces.map(() => new Set<number>())
  const crossings: [number, number][] = []
  const seen = faces.map((face) => seenBy(camera, face))
  for (const [a, faceA] of faces.entries())
    for (let b = a + 1; b < faces.length; b++) {
      const faceB = faces[b] as Face
      const [seenA, seenB] = [seen[a], seen[b]]
      const lead = seenA && seenB && faceA.plate !== faceB.plate ? leadOf(seenA, seenB, camera) : undefined
      if (!lead) continue
      if (lead.most > touching && lead.least < -touching) crossings.push([a, b])
      const nearer = frontOf(lead) ?? onTop(faceA, faceB, levels, camera, faces)
      if (nearer > 0) before[a]?.add(b)
      if (nearer < 0) before[b]?.add(a)
    }
  return { before, crossings }
}

/** Whether A (1) or B (-1) is in front; nothing when they lie on one another. */
function frontOf({ least, most }: Lead): number | undefined {
  return most > touching || least < -touching ? Math.sign(most + least) : undefined
}

/** Whether A (1) or B (-1) lies on the other, of two that touch; 0 when no bond says. */
function onTop(
  a: Face,
  b: Face,
  levels: ReadonlyMap<string, Level>,
  camera: Camera,
  faces: readonly Face[],
): number {
  const [la, lb] = [levels.get(a.plate.name), levels.get(b.plate.name)]
  if (!la || !lb || la.stack !== lb.stack) return 0
  const root = faces.find((f) => f.plate.name === la.root) ?? a
  const towards = dot(root.place.normal, camera.eye) > 0 ? 1 : -1
  return Math.sign(la.level - lb.level) * towards
}

/** Always the farthest of those that nothing hides behind any more; `left` when they hide one another in a circle. */
function sorted(
  faces: readonly Face[],
  before: Relation['before'],
  camera: Camera,
): { order: Face[]; left: number[] } {
  const left = new Set(faces.keys())
  const order: Face[] = []
  while (left.size > 0) {
    const free = [...left].filter((i) => [...(before[i] ?? [])].every((j) => !left.has(j)))
    const [next] = free.sort(
      (a, b) => middle(faces[a] as Face, camera) - middle(faces[b] as Face, camera) || a - b,
    )
    if (next === undefined) break
    order.push(faces[next] as Face)
    left.delete(next)
  }
  return { order, left: [...left] }
}

/** The faces with the first of the pairs that can be cut apart: one by the plane of the other, or the other way round. */
function firstCut(faces: readonly Face[], pairs: readonly (readonly [number, number])[]): Face[] | undefined {
  for (const [a, b] of pairs.flatMap(([i, j]) => [[i, j] as const, [j, i] as const])) {
    const parts = split(faces[a] as Face, faces[b] as Face)
    if (parts.length === 2) return faces.flatMap((face, i) => (i === a ? parts : [face]))
  }
  return undefined
}

const byMiddle = (faces: readonly Face[], camera: Camera): Face[] =>
  [...faces].sort((a, b) => middle(a, camera) - middle(b, camera))

const middle = (face: Face, camera: Camera): number =>
  face.outline.reduce((sum, corner) => sum + dot(corner.at, camera.eye), 0) / face.outline.length
