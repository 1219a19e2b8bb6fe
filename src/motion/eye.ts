import type { Rigid, Vector } from './rigid.ts'
import { spotOf } from './rigid.ts'

/** How the card is looked at: from how far to the left and from how far above, in degrees. */
export interface Look {
  readonly turn: number
  readonly rise: number
}

/** Unit vectors: to the right and up on the screen, and from the card towards the eye. */
export interface Eye {
  readonly right: Vector
  readonly up: Vector
  readonly eye: Vector
}

/** The same parallel projection as in the figures. */
export function eyeAt({ turn, rise }: Look): Eye {
  const [a, b] = [(turn * Math.PI) / 180, (rise * Math.PI) / 180]
  const [sa, ca, sb, cb] = [Math.sin(a), Math.cos(a), Math.sin(b), Math.cos(b)]
  return { right: [ca, 0, sa], up: [sa * sb, cb, -ca * sb], eye: [-sa * cb, sb, ca * cb] }
}

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

/** A box round everything, as it is seen: its middle in space, and its size across, up and deep. */
export interface Seen {
  readonly middle: Vector
  readonly size: Vector
}

export function seenBox({ right, up, eye }: Eye, spots: readonly Vector[]): Seen {
  const [x, y, z] = [right, up, eye].map((axis) => {
    const along = spots.map((spot) => dot(spot, axis))
    const [low, high] = [Math.min(...along), Math.max(...along)]
    return { middle: (low + high) / 2, size: high - low }
  })
  const at = (i: 0 | 1 | 2): number =>
    right[i] * (x?.middle ?? 0) + up[i] * (y?.middle ?? 0) + eye[i] * (z?.middle ?? 0)
  return { middle: [at(0), at(1), at(2)], size: [x?.size ?? 0, y?.size ?? 0, z?.size ?? 0] }
}

/** All corners of what is there. */
export const cornersAt = (
  plates: readonly { readonly outline: readonly (readonly [number, number])[] }[],
  places: readonly Rigid[],
  isThere: (plate: number) => boolean,
): Vector[] =>
  plates.flatMap(({ outline }, i) => {
    const place = places[i]
    return place && isThere(i) ? outline.map(([x, y]) => spotOf(place, [x, y, 0])) : []
  })
