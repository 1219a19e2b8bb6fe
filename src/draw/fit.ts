import type { LabelWord } from '../lesson/label-words.ts'
import { extent } from './frame.ts'
import type { Mark } from './mark.ts'
import { withScale } from './scale.ts'

/** The room a figure may take, in mm at print size, and its text size in points. */
export interface FigureOptions {
  readonly maxWidth?: number
  readonly maxHeight?: number
  /** In points; 8 unless a large print asks for more. */
  readonly text?: number
  /** Labels width × depth of a standing card. */
  readonly dimensions?: boolean
  /** `false` leaves out what the lines of a flat piece mean, where that is said once for many figures. */
  readonly legend?: boolean
  /** No larger than this: mm on paper for one mm of the card, so that several figures compare. */
  readonly mostScale?: number
  /** Which numbers and names stand in it; without it, those that the kind of figure usually has. */
  readonly labels?: readonly LabelWord[]
  /** What the ids in it begin with, a word that no other figure on the page has; without it they follow from the content. */
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

/** A drawing at a scale, and its size with everything round it. */
interface Trial {
  readonly scale: number
  readonly marks: Mark[]
  readonly width: number
  readonly height: number
}

/**
 * Draws at the largest scale (the same both ways) at which everything, with its dimensions, fits the room.
 *
 * Texts do not shrink with the shape, so the scale is searched for. When the texts alone need more than there is, the
 * shape keeps the `least` scale and the figure grows beyond its room rather than become unreadable.
 *
 * @param room as the options of a figure give it; a `mostScale` that fits is kept, be it smaller than `least`.
 * @returns marks of which `scaleOf` tells the scale.
 */
export function fitted(
  draw: (scale: number) => Mark[],
  room: { maxWidth: number; maxHeight: number; mostScale?: number },
  { least, most: usual }: { least: number; most: number },
): Mark[] {
  const most = Math.min(usual, room.mostScale ?? usual)
  const attempt = (scale: number): Trial => {
    const marks = draw(scale)
    return { scale, marks, ...extent(marks) }
  }
  const fits = ({ width, height }: Trial): boolean =>
    width <= room.maxWidth + 1e-6 && height <= room.maxHeight + 1e-6
  let high = attempt(most)
  if (fits(high)) return withScale(high.marks, high.scale)
  let low = attempt(least)
  if (!fits(low)) return withScale(low.marks, low.scale)
  // Where words below a small shape take all the room, its size says nothing yet of how the shape grows.
  const hidden = low.width > room.maxWidth * 0.9 || low.height > room.maxHeight * 0.9
  // Sizes grow nearly in line with the scale, so one or two estimates are enough; texts that change rows make steps.
  for (let i = 0; i < mostTrials; i++) {
    const scale = hidden ? (low.scale + high.scale) / 2 : estimate(low, high, room)
    if (scale <= low.scale * 1.004) break
    const trial = attempt(scale)
    if (fits(trial)) low = trial
    else high = trial
  }
  return withScale(low.marks, low.scale)
}

const mostTrials = 6

/** Where straight lines through both trials meet the room: a hair less, and well away from the one that is too large. */
function estimate(low: Trial, high: Trial, room: { maxWidth: number; maxHeight: number }): number {
  const meets = (a: number, b: number, max: number): number => (b > a ? (max - a) / (b - a) : 1)
  const share = Math.min(
    meets(low.width, high.width, room.maxWidth),
    meets(low.height, high.height, room.maxHeight),
    0.9,
  )
  return low.scale + (high.scale - low.scale) * share * 0.999
}
