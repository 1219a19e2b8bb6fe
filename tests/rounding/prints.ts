import { formatGrid, formatSize } from '../../src/length/format.ts'
import { inches, type Length, type Size, shorter, times, type Unit } from '../../src/length/length.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import type { FilledLesson, Lesson } from '../../src/lesson/lesson.ts'
import { troublesOf, troublesOfErrors } from './troubles.ts'

/** A lesson printed at a size, in a unit, on a ruler. */
export interface Print {
  readonly filled: FilledLesson
  /** Whether its cards are proven. */
  readonly proven: boolean
  /** The shut card; what was wished when there is none. */
  readonly closed: Size
  /** What it breaks, each with the size. */
  readonly troubles: readonly string[]
}

const isLarger = (a: Size, b: Size): boolean => shorter(b.width, a.width) || shorter(b.height, a.height)

/** Prints a lesson and measures what came of it. */
export function printed(lesson: Lesson, wish: Size, units: Unit, grid: Length): Print {
  const filled = fillLesson(lesson, { closed: wish, units, grid })
  const proven = !filled.findings.some(({ severity }) => severity === 'error')
  const closed = filled.cards[0]?.card.closed ?? wish
  const mark = { width: wish.width.sub(closed.width), height: wish.height.sub(closed.height) }
  const found = [
    ...(proven ? troublesOf(lesson, filled) : troublesOfErrors(filled)),
    ...(isLarger(closed, wish) ? ['the shut card is larger than was wished'] : []),
    ...(mark.width.gte(grid) || mark.height.gte(grid)
      ? ['the shut card is smaller by more than a mark']
      : []),
  ]
  const where = `${formatSize(wish, units)}, ruler ${formatGrid(grid)}`
  return { filled, proven, closed, troubles: found.map((one) => `${where}: ${one}`) }
}

/** Sizes that any card can be made in: 4 in at least, no longer than twice as wide, and wide enough for the letters on it. */
export function isOrdinary({ width, height }: Size, narrowest: Length, square: boolean): boolean {
  const [short, long] = shorter(width, height) ? [width, height] : [height, width]
  if (square && !width.equals(height)) return false
  return !shorter(short, inches(4)) && !shorter(width, narrowest) && !shorter(times(short, 2), long)
}
