import { formatSize } from '../../length/format.ts'
import { type Size, same, type Unit } from '../../length/length.ts'
import { mainCard } from '../figure-target.ts'
import { fillLesson } from '../fill.ts'
import type { FilledLesson, FrontMatter, Lesson, OtherSize } from '../lesson.ts'

/** A shut size that a lesson is printed in: its own, or another one as somebody wrote it. */
export interface Offered {
  /** Missing for the lesson's own size. */
  readonly other?: OtherSize
  /** How the size is named, such as `6 × 6 in` or `A6 landscape`. */
  readonly label: string
}

/** A lesson printed in one size and one unit. */
export interface SizePrint extends Offered {
  readonly unit: Unit
  readonly print: FilledLesson
}

/** Both units, that of the lesson first. */
export const unitsOf = ({ units }: Pick<FrontMatter, 'units'>): readonly [Unit, Unit] =>
  units === 'in' ? ['in', 'mm'] : ['mm', 'in']

export const sameSize = (a: Size, b: Size): boolean => same(a.width, b.width) && same(a.height, b.height)

/** A size as it is written, with the sign that stands in print: `6 × 6 in`. */
const sizeLabel = (text: string): string => text.trim().replace(/\s*[x×]\s*(?=[\d.])/giu, ' × ')

/** The sizes that a lesson is offered in besides its own, each once. */
export function otherSizes(own: FilledLesson, more: readonly OtherSize[] = []): OtherSize[] {
  const closed = mainCard(own.cards.map(({ card }) => card))?.closed
  const sizes: OtherSize[] = []
  for (const other of [...own.frontMatter.sizes, ...more])
    if (!(closed && sameSize(closed, other.size)) && !sizes.some(({ size }) => sameSize(size, other.size)))
      sizes.push(other)
  return sizes
}

/**
 * A lesson printed in its own size and in others, in several units: each a card of its own, proven again.
 *
 * @param own the lesson in its own size and unit; it is not printed again.
 * @param others see `otherSizes`.
 * @returns the prints by size, each in the order of `units`; the own size comes first.
 */
export function sizePrints(
  lesson: Lesson,
  own: FilledLesson,
  others: readonly OtherSize[],
  units: readonly Unit[],
): SizePrint[] {
  const closed = mainCard(own.cards.map(({ card }) => card))?.closed
  const sizes: Offered[] = [
    { label: closed ? formatSize(closed, own.unit) : 'its own size' },
    ...others.map((other) => ({ other, label: sizeLabel(other.text) })),
  ]
  return sizes.flatMap((offered) =>
    units.map((unit) => ({
      ...offered,
      unit,
      print: offered.other || unit !== own.unit ? printOf(lesson, own, unit, offered.other?.size) : own,
    })),
  )
}

function printOf(lesson: Lesson, own: FilledLesson, units: Unit, closed: Size | undefined): FilledLesson {
  // The ruler of one unit says nothing about that of the other.
  const grid = units === own.unit ? own.grid : undefined
  return fillLesson(lesson, { units, ...(closed && { closed }), ...(grid && { grid }) })
}
