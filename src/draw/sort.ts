import type { Structure } from '../card/structure.ts'
import type { Closed } from '../fold/pose.ts'
import type { Camera } from './camera.ts'
import { type Face, split } from './face/face.ts'
import { type Front, frontOf, type Known } from './front.ts'
import { type Seen, seenBy } from './overlap.ts'
import { dot } from './space.ts'
import { levelsOf } from './stack.ts'

/** More cuts than this, and circles are opened where least is seen of it. No card comes near it. */
const mostSplits = 200

/**
 * Faces from the farthest to the nearest: painted in this order, each hides what it should.
 *
 * Faces are compared two by two where their images overlap. A face that passes through another, or is part of a circle
 * (each hides a bit of the next), is split along the other's plane and the parts are sorted instead.
 *
 * @param closed the same card shut: it tells which of two sheets lies on the other where they still touch.
 */
export function paintOrder(
  faces: readonly Face[],
  structure: Structure,
  camera: Camera,
  closed?: Pick<Closed, 'order' | 'pose'>,
): Face[] {
  const compare = comparing(structure, camera, closed)
  let rest = [...faces]
  for (let splits = 0; ; splits++) {
    const { behind, crossings } = relation(rest, compare)
    const { order, circle } = sorted(rest, behind, camera)
    const pairs = crossings.length > 0 ? crossings : circle
    const parts = splits < mostSplits ? firstCut(rest, pairs) : undefined
    if (parts) rest = parts
    else if (circle.length === 0) return order
    else return sorted(rest, behind, camera, 'open').order
  }
}

type Compare = (a: Face, b: Face) => Front | undefined

/** Compares faces, and remembers what it found: after a cut most of them are the same as before. */
function comparing(
  structure: Structure,
  camera: Camera,
  closed: Pick<Closed, 'order' | 'pose'> | undefined,
): Compare {
  const known: Known = { levels: levelsOf(structure), ...(closed && { closed }) }
  const seen = new Map<Face, Seen | undefined>()
  const found = new Map<Face, Map<Face, Front | undefined>>()
  const see = (face: Face): Seen | undefined => {
    if (!seen.has(face)) seen.set(face, seenBy(camera, face))
    return seen.get(face)
  }
  return (a, b) => {
    const own = found.get(a) ?? new Map<Face, Front | undefined>()
    found.set(a, own)
    if (!own.has(b)) {
      const [seenA, seenB] = [see(a), see(b)]
      own.set(b, seenA && seenB && a.plate !== b.plate ? frontOf(seenA, seenB, camera, known) : undefined)
    }
    return own.get(b)
  }
}

interface Relation {
  /** `behind[i]` holds the faces that are painted before face i, and how sure that is. */
  readonly behind: readonly ReadonlyMap<number, number>[]
  /** Two faces of which each is in front of the other somewhere: they pass through one another. */
  readonly crossings: readonly (readonly [number, number])[]
}

function relation(faces: readonly Face[], compare: Compare): Relation {
  const behind = faces.map(() => new Map<number, number>())
  const crossings: [number, number][] = []
  for (const [a, faceA] of faces.entries())
    for (let b = a + 1; b < faces.length; b++) {
      const front = compare(faceA, faces[b] as Face)
      if (!front) continue
      if (front.crosses) crossings.push([a, b])
      if (front.nearer > 0) behind[a]?.set(b, front.by)
      if (front.nearer < 0) behind[b]?.set(a, front.by)
    }
  return { behind, crossings }
}

/**
 * Always the farthest of those that nothing hides behind any more. Faces that hide one another in a circle stop it: their
 * pairs are told, or the circle is opened where the two are the nearest to one another.
 */
function sorted(
  faces: readonly Face[],
  behind: Relation['behind'],
  camera: Camera,
  circles: 'tell' | 'open' = 'tell',
): { order: Face[]; circle: (readonly [number, number])[] } {
  const depths = faces.map((face) => middle(face, camera))
  const waiting = behind.map((all) => new Map(all))
  const left = new Set(faces.keys())
  const order: Face[] = []
  const depth = (i: number): number => depths[i] ?? 0
  while (left.size > 0) {
    const free = [...left].filter((i) => waiting[i]?.size === 0)
    if (free.length === 0) {
      const pairs = circling(waiting, left)
      if (circles === 'tell') return { order, circle: pairs }
      const sure = ([i, j]: readonly [number, number]): number => waiting[i]?.get(j) ?? 0
      const weakest = pairs.reduce((least, pair) => (sure(pair) < sure(least) ? pair : least))
      waiting[weakest[0]]?.delete(weakest[1])
      continue
    }
    const next = free.reduce((far, i) => (depth(i) < depth(far) ? i : far))
    order.push(faces[next] as Face)
    left.delete(next)
    for (const others of waiting) others.delete(next)
  }
  return { order, circle: [] }
}

/** The pairs of those left that may be part of a circle: what hides nothing of the others is not. */
function circling(
  waiting: readonly ReadonlyMap<number, number>[],
  left: ReadonlySet<number>,
): (readonly [number, number])[] {
  const core = new Set(left)
  for (let size = 0; size !== core.size; ) {
    size = core.size
    for (const i of core) if (![...core].some((j) => waiting[j]?.has(i))) core.delete(i)
  }
  return [...core].flatMap((i) =>
    [...(waiting[i]?.keys() ?? [])].filter((j) => core.has(j)).map((j) => [i, j] as const),
  )
}

/** The faces with the first of the pairs that can be cut apart: one by the plane of the other, or the other way round. */
function firstCut(faces: readonly Face[], pairs: readonly (readonly [number, number])[]): Face[] | undefined {
  for (const [a, b] of pairs.flatMap(([i, j]) => [[i, j] as const, [j, i] as const])) {
    const parts = split(faces[a] as Face, faces[b] as Face)
    if (parts.length === 2) return faces.flatMap((face, i) => (i === a ? parts : [face]))
  }
  return undefined
}

const middle = (face: Face, camera: Camera): number =>
  face.outline.reduce((sum, corner) => sum + dot(corner.at, camera.eye), 0) / face.outline.length
