import { type Box, boxAround, near } from './box.ts'
import type { Camera } from './camera.ts'
import { clipLoop, mix2 } from './clip.ts'
import { type Face, over } from './face/face.ts'
import { dot } from './space.ts'

type Spot = readonly [number, number]

/** Overlaps smaller than this, in mm², are two edges that meet. */
const leastArea = 0.05

/** How a face lies to another where one hides the other: by how many mm it is nearer to the eye, at least and at most. */
export interface Lead {
  readonly least: number
  readonly most: number
}

/** A face as it is seen: its image in convex parts, and the box round them. */
export interface Seen {
  readonly face: Face
  readonly parts: readonly Spot[][]
  readonly box: Box
}

/** What is seen of a face; nothing when it is seen along its edge. */
export function seenBy(camera: Camera, face: Face): Seen | undefined {
  if (Math.abs(dot(face.place.normal, camera.eye)) < 1e-3) return undefined
  const spots = image(face, camera)
  return { face, parts: convexParts(spots), box: boxAround(spots) }
}

/** Compares two faces where their images overlap; nothing when they do not. */
export function leadOf(a: Seen, b: Seen, camera: Camera): Lead | undefined {
  if (!near(a.box, b.box)) return undefined
  const leads: number[] = []
  for (const partA of a.parts)
    for (const partB of b.parts) {
      const common = meet(partA, partB)
      if (Math.abs(area(common)) < leastArea) continue
      // Nearness is linear over a face, so its extremes are at corners.
      for (const spot of common) leads.push(nearness(a.face, spot, camera) - nearness(b.face, spot, camera))
    }
  return leads.length > 0 ? { least: Math.min(...leads), most: Math.max(...leads) } : undefined
}

/** A face on the paper, y upwards, counter-clockwise. */
function image(face: Face, camera: Camera): Spot[] {
  const spots = face.outline.map(({ at }): Spot => [dot(at, camera.right), dot(at, camera.up)])
  // A corner in the middle of a straight edge, where a crease ends, is none here.
  const corners = spots.filter(
    (p, i) => Math.abs(turn(spots.at(i - 1) ?? p, p, spots[(i + 1) % spots.length] ?? p)) > 1e-7,
  )
  return area(corners) < 0 ? corners.reverse() : corners
}

/** How near to the eye a face is where it is seen at a spot. */
function nearness(face: Face, [x, y]: Spot, { right, up, eye }: Camera): number {
  const at = [0, 1, 2].map((i) => (right[i] ?? 0) * x + (up[i] ?? 0) * y) as unknown as typeof eye
  return -over(face, at) / dot(face.place.normal, eye)
}

const area = (loop: readonly Spot[]): number =>
  loop.reduce((sum, [x, y], i) => {
    const [nx, ny] = loop[(i + 1) % loop.length] as Spot
    return sum + (x * ny - nx * y) / 2
  }, 0)

/** What two convex loops have in common. */
const meet = (a: readonly Spot[], b: readonly Spot[]): Spot[] =>
  b.reduce<Spot[]>(
    (rest, from, i) => {
      const to = b[(i + 1) % b.length] as Spot
      return clipLoop(rest, (p) => turn(from, to, p), mix2)
    },
    [...a],
  )

/** More than 0 where `c` lies to the left of the line from `a` to `b`. */
const turn = (a: Spot, b: Spot, c: Spot): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

/** A counter-clockwise loop as convex ones: itself, or the triangles of cutting its ears off. */
function convexParts(loop: readonly Spot[]): Spot[][] {
  const rest = [...loop]
  const at = (i: number) => rest[(i + rest.length) % rest.length] as Spot
  if (rest.every((p, i) => turn(at(i - 1), p, at(i + 1)) > -1e-9)) return [rest]
  const parts: Spot[][] = []
  while (rest.length > 3) {
    const ear = rest.findIndex((p, i) => {
      const [a, c] = [at(i - 1), at(i + 1)]
      const inside = (q: Spot) => turn(a, p, q) > 0 && turn(p, c, q) > 0 && turn(c, a, q) > 0
      return turn(a, p, c) > 1e-12 && !rest.some((q) => q !== a && q !== p && q !== c && inside(q))
    })
    if (ear < 0) break
    parts.push([at(ear - 1), at(ear), at(ear + 1)])
    rest.splice(ear, 1)
  }
  return [...parts, rest]
}
