import { extent } from './frame.ts'
import type { Mark } from './mark.ts'

/** The room a figure may take, in mm at print size, and its text size in points. */
export interface FigureOptions {
  readonly maxWidth?: number
  readonly maxHeight?: number
  /** In points; 8 unless a large print asks for more. */
  readonly text?: number
  /** Labels width × depth of a standing card. */
  readonly dimensions?: boolean
  /** Tells apart figures of the same content on one page, so that their ids differ. */
  readonly key?: string
}

export const usualRoom = { maxWidth: 82, maxHeight: 70 }

/**
 * Draws at the largest scale (the same both ways) at which everything, with its dimensions, fits the room.
 *
 * Texts do not shrink with the shape, so the scale is searched for. When the texts alone need more than there is, the
 * shape keeps the `least` scale and the figure grows beyond its room rather than become unreadable.
 */
export function fitted(
  draw: (scale: number) => Mark[],
  { maxWidth, maxHeight }: { maxWidth: number; maxHeight: number },
  { least, most }: { least: number; most: number },
): Mark[] {
  const fits = (marks: readonly Mark[]): boolean => {
    const { width, height } = extent(marks)
    return width <= maxWidth + 1e-6 && height <= maxHeight + 1e-6
  }
  let best = draw(most)
  if (fits(best)) return best
  best = draw(least)
  let [low, high] = [least, most]
  for (let i = 0; i < 18 && high > low; i++) {
    const scale = (low + high) / 2
    const marks = draw(scale)
    if (fits(marks)) [best, low] = [marks, scale]
    else high = scale
  }
  return best
}
