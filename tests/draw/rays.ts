import type { Camera } from '../../src/draw/camera.ts'
import type { Face } from '../../src/draw/face.ts'
import type { Vector } from '../../src/fold/pose.ts'

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

/** Where a ray through a spot of the paper meets a face: how near to the eye, or nothing when it misses it. */
function hit(face: Face, [x, y]: readonly [number, number], { right, up, eye }: Camera): number | undefined {
  const start: Vector = [right[0] * x + up[0] * y, right[1] * x + up[1] * y, right[2] * x + up[2] * y]
  const { origin, normal, right: u, up: v } = face.place
  const slope = dot(normal, eye)
  if (Math.abs(slope) < 1e-6) return undefined
  const from: Vector = [origin[0] - start[0], origin[1] - start[1], origin[2] - start[2]]
  const near = dot(from, normal) / slope
  const at: Vector = [start[0] + eye[0] * near, start[1] + eye[1] * near, start[2] + eye[2] * near]
  const flat = (p: Vector): readonly [number, number] => {
    const d: Vector = [p[0] - origin[0], p[1] - origin[1], p[2] - origin[2]]
    return [dot(d, u), dot(d, v)]
  }
  const inLoop = (loop: readonly { at: Vector }[]) =>
    crossings(
      loop.map((c) => flat(c.at)),
      flat(at),
    ) %
      2 ===
    1
  return inLoop(face.outline) && !face.holes.some(inLoop) ? near : undefined
}

/** How many edges of a loop a ray to the right crosses. */
function crossings(loop: readonly (readonly [number, number])[], [x, y]: readonly [number, number]): number {
  return loop.filter(([x1, y1], i) => {
    const [x2, y2] = loop[(i + 1) % loop.length] as readonly [number, number]
    return y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)
  }).length
}

/**
 * Spots of the paper where something farther than what is nearest by more than `most` mm is painted last, that is,
 * hides it. Spots are a grid over the picture, so fine that no plate falls between.
 */
export function wronglyHidden(painted: readonly Face[], camera: Camera, most: number, grid = 40): string[] {
  const all = painted.flatMap((f) =>
    f.outline.map(({ at }) => [dot(at, camera.right), dot(at, camera.up)] as const),
  )
  const [xs, ys] = [all.map((p) => p[0]), all.map((p) => p[1])]
  const [left, low] = [Math.min(...xs), Math.min(...ys)]
  const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - low]
  const wrong = new Set<string>()
  for (let i = 0; i < grid; i++)
    for (let j = 0; j < grid; j++) {
      const spot = [left + (wide * (i + 0.37)) / grid, low + (high * (j + 0.59)) / grid] as const
      const hits = painted.flatMap((face) => {
        const near = hit(face, spot, camera)
        return near === undefined ? [] : [{ name: face.plate.name, near }]
      })
      const [last, nearest] = [hits.at(-1), Math.max(...hits.map((h) => h.near))]
      const hidden = hits.find((h) => h.near === nearest)
      if (last && hidden && nearest - last.near > most) wrong.add(`${last.name} hides ${hidden.name}`)
    }
  return [...wrong]
}
