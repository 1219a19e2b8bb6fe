import type { Camera } from '../../src/draw/camera.ts'
import type { Face } from '../../src/draw/face/face.ts'
import type { Closed, Vector } from '../../src/fold/pose.ts'

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
type Spot = readonly [number, number]

/** A face as rays see it: its edges on the paper, and how near to the eye it is at a spot, which is linear. */
interface Target {
  readonly face: Face
  readonly edges: readonly (readonly [Spot, Spot])[]
  readonly left: number
  readonly right: number
  readonly near: (spot: Spot) => number
}

function targetOf(face: Face, { right, up, eye }: Camera): Target | undefined {
  const { origin, normal } = face.place
  const slope = dot(normal, eye)
  if (Math.abs(slope) < 2e-3) return undefined
  const loops = [face.outline, ...face.holes].map((loop) =>
    loop.map(({ at }): Spot => [dot(at, right), dot(at, up)]),
  )
  const xs = loops.flat().map(([x]) => x)
  // Along the ray through a spot the face is met where the height over its plane is zero.
  const [level, perX, perY] = [
    dot(origin, normal) / slope,
    dot(right, normal) / slope,
    dot(up, normal) / slope,
  ]
  return {
    face,
    edges: loops.flatMap((loop) => loop.map((p, i) => [p, loop[(i + 1) % loop.length] ?? p] as const)),
    left: Math.min(...xs),
    right: Math.max(...xs),
    near: ([x, y]) => level - x * perX - y * perY,
  }
}

/** Whether a ray to the right crosses an odd number of edges. */
const isInside = (edges: Target['edges'], [x, y]: Spot): boolean =>
  edges.filter(([[x1, y1], [x2, y2]]) => y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1))
    .length %
    2 ===
  1

/** What a check of hidden surfaces takes as right. */
export interface Looking {
  /** Depths may be wrong by so many mm. */
  readonly most: number
  /** Spots along the longer side of the picture. */
  readonly grid?: number
  /**
   * Sheets whose planes run into one another by no more than this, in mm, are pushed aside by one another: what is in
   * front for the most part, or lay in front in the shut card, is in front.
   */
  readonly givesWay?: number
  readonly closed?: Closed | undefined
}

/**
 * Pairs of plates of which the farther one is painted last somewhere, that is, hides the nearer one: each with the number
 * of spots at which it does. Spots are a grid over the picture. Nothing of this is shared with what sorts the faces.
 */
export function wronglyHidden(
  painted: readonly Face[],
  camera: Camera,
  { most, grid = 40, givesWay = 0, closed }: Looking,
): string[] {
  const targets = painted.flatMap((face) => targetOf(face, camera) ?? [])
  const corners = targets.flatMap(({ edges }) => edges.map(([p]) => p))
  const [xs, ys] = [corners.map((p) => p[0]), corners.map((p) => p[1])]
  const [left, low] = [Math.min(...xs), Math.min(...ys)]
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - low]
  const step = Math.max(wide, high) / grid
  const leads = new Map<string, number>()
  const wrong = new Map<string, { over: Face; hidden: Face; by: number; spots: number }>()
  for (let x = left + step * 0.37; x < left + wide; x += step)
    for (let y = low + step * 0.59; y < low + high; y += step) {
      const spot = [x, y] as const
      const hits = targets
        .filter((t) => x > t.left && x < t.right && isInside(t.edges, spot))
        .map(({ face, near }) => ({ face, near: near(spot) }))
      const last = hits.at(-1)
      if (!last) continue
      for (const { face, near } of hits) {
        if (face.plate === last.face.plate) continue
        const by = near - last.near
        const pair = `${last.face.plate.name} hides ${face.plate.name}`
        leads.set(pair, Math.max(leads.get(pair) ?? 0, -by))
        if (by <= most) continue
        const so = wrong.get(pair) ?? { over: last.face, hidden: face, by: 0, spots: 0 }
        wrong.set(pair, { ...so, by: Math.max(so.by, by), spots: so.spots + 1 })
      }
    }
  return [...wrong]
    .filter(([pair, { over, hidden, by }]) => {
      if (by > givesWay) return true
      return (leads.get(pair) ?? 0) <= by && !(closed && layInFront(over, hidden, closed, camera))
    })
    .map(([pair, { by, spots }]) => `${pair} at ${spots} spots by ${by.toFixed(3)} mm`)
}

/** Whether one plate, seen from the eye, is on that side of another on which it lay in the shut card. */
function layInFront(over: Face, hidden: Face, { order, plates }: Closed, { eye }: Camera): boolean {
  const [front, back] = [over, hidden].map(({ plate, place: { normal } }) => {
    const up = plates.find((laid) => laid.plate === plate.name)?.faceUp ? 1 : -1
    return { name: plate.name, seen: up * dot(normal, eye) }
  })
  if (!front || !back || front.seen * back.seen <= 0) return false
  return order.indexOf(front.name) < order.indexOf(back.name) === front.seen > 0
}

/** For each piece, the share of its picture that other pieces hide; spots are a grid over the picture of all. */
export function hiddenShares(faces: readonly Face[], camera: Camera, grid = 60): Map<string, number> {
  const targets = faces.flatMap((face) => targetOf(face, camera) ?? [])
  const corners = targets.flatMap(({ edges }) => edges.map(([from]) => from))
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)]
  const [left, low] = [Math.min(...xs), Math.min(...ys)]
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - low]
  const seen = new Map<string, number>()
  const all = new Map<string, number>()
  for (let i = 0; i < grid; i++)
    for (let j = 0; j < grid; j++) {
      const spot: Spot = [left + (wide * (i + 0.37)) / grid, low + (high * (j + 0.59)) / grid]
      const met = targets.filter(({ edges }) => isInside(edges, spot))
      const first = met.toSorted((a, b) => b.near(spot) - a.near(spot))[0]?.face.piece.name ?? ''
      seen.set(first, (seen.get(first) ?? 0) + 1)
      for (const name of new Set(met.map(({ face }) => face.piece.name)))
        all.set(name, (all.get(name) ?? 0) + 1)
    }
  return new Map([...all].map(([name, count]) => [name, 1 - (seen.get(name) ?? 0) / count]))
}
