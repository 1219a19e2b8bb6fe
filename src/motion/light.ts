import { dot, type Eye } from './eye.ts'
import type { Vector } from './rigid.ts'

/**
 * Where the light comes from, as the figures have it: the front, above, a little from the right. It keeps to whoever
 * looks, so that the back of the card is not left in the dark.
 */
const light: Vector = [0.35, 0.45, 0.82]
const usual = { turn: 36, rise: 19 }

/** Laid thinly over faces that look away from the light. */
const shade: readonly number[] = [0x43, 0x38, 0x1f]

/** The light for an eye: as it falls on the card seen from the front left, carried along as the eye goes round. */
export function lightFor(eye: Eye, home: Eye): Vector {
  const [x, y, z] = [home.right, home.up, home.eye].map((axis) => dot(light, axis))
  const at = (i: 0 | 1 | 2): number => eye.right[i] * (x ?? 0) + eye.up[i] * (y ?? 0) + eye.eye[i] * (z ?? 0)
  return [at(0), at(1), at(2)]
}

/** How much darker a side is for looking away from the light: the measure of the figures, and twice as strong. */
export const dimmed = (normal: Vector, towards: Vector): number =>
  Math.min(0.2, Math.max(0, (light[2] - dot(normal, towards)) * 0.17))

/** A colour (`#rrggbb`) with the shade on it, as three shares. */
export function shaded(colour: string, dim: number): [number, number, number] {
  const part = (i: 0 | 1 | 2): number => {
    const own = Number.parseInt(colour.slice(1 + 2 * i, 3 + 2 * i), 16)
    return (own * (1 - dim) + (shade[i] ?? 0) * dim) / 255
  }
  return [part(0), part(1), part(2)]
}

export { usual as usualLight }
