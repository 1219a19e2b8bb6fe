import { between, pitchOf } from './leaves.ts'
import type { PageBox } from './printed.ts'

/** How large a leaf lies there: all of it, as wide as there is room, or so many times its real size. */
export type Fit = 'whole' | 'wide' | number

export interface Room {
  readonly width: number
  readonly height: number
}

/** How the leaves lie in the room: their scale, and what is left free on both sides and above. */
export interface Laid {
  readonly scale: number
  readonly aside: number
  readonly above: number
  /** From one leaf to the next, and the whole row, as they are seen. */
  readonly pitch: number
  readonly wide: number
  readonly high: number
  /** Whether a leaf is wider or higher than the room. */
  readonly spills: boolean
}

/** What is seen of the leaves on both sides, and the least room round one, in dots. */
const [peek, rim] = [26, 14]
const scales = { least: 0.2, most: 4 }
const step = 1.2

/** How `count` leaves lie in a room. */
export function laid(fit: Fit, box: PageBox, { width, height }: Room, count: number): Laid {
  const wide = (width - 2 * (count > 1 ? peek : rim)) / box.width
  const whole = Math.min(wide, (height - 2 * rim) / box.height)
  const scale = held(fit === 'whole' ? whole : fit === 'wide' ? wide : fit)
  const [leaf, high] = [box.width * scale, box.height * scale]
  const aside = Math.max(rim, (width - leaf) / 2)
  const above = Math.max(rim, (height - high) / 2)
  return {
    scale,
    aside,
    above,
    pitch: pitchOf(box) * scale,
    wide: 2 * aside + (count * pitchOf(box) - between) * scale,
    high: high + 2 * above,
    spills: leaf > width || high + 2 * rim > height + 1,
  }
}

/** One step nearer or farther than now. */
export const nearer = (scale: number): number => held(scale * step)
export const farther = (scale: number): number => held(scale / step)

export const held = (scale: number): number => Math.min(scales.most, Math.max(scales.least, scale))
