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
 * The scales between which a shape is drawn: its longer side holds a dozen letters at the least, so that the measures of
 * at least one side stand between their marks; and it is no larger than life, unless it is tiny.
 *
 * @param long its longer side in mm, `size` the text size in mm.
 */
export const leastAndMost = (long: number, size: number): { least: number; most: number } => ({
  least: (12 * size) / long,
  most: Math.max(1, (12 * size) / long),
})

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
  while (high / low > 1.004) {
    const scale = (low + high) / 2
    const marks = draw(scale)
    if (fits(marks)) [best, low] = [marks, scale]
    else high = scale
  }
  return best
}
