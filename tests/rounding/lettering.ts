import type Fraction from 'fraction.js'
import type { Lettering } from '../../src/card/card.ts'
import type { ProvenCard } from '../../src/lesson/lesson.ts'

/**
 * Letters that do not come to their strip: margins, letters and gaps, as the marks lay them.
 *
 * @param margin the exact margin of a lettering.
 */
export const troublesOfLettering = (
  { card: { lettering, structure, grid } }: ProvenCard,
  margin: (name: string) => Fraction | undefined,
): string[] =>
  lettering.flatMap(({ name, on, marks, widths, gap }: Lettering) => {
    const strip = structure.pieces.find((piece) => piece.name === on)?.size.width
    const [first, last, lastWidth] = [marks[0], marks.at(-1), widths.at(-1)]
    if (!strip || !first || !last || !lastWidth) return []
    const right = strip.sub(last).sub(lastWidth)
    const wanted = margin(name)
    const gaps = marks.slice(1).map((mark, i) => mark.sub(marks[i] ?? mark).sub(widths[i] ?? mark))
    const sum = widths
      .reduce((all: Fraction, width) => all.add(width), first.add(right))
      .add(gap.mul(marks.length - 1))
    return [
      ...(gaps.every((one) => one.equals(gap)) ? [] : [`${name} is not spaced evenly`]),
      ...(sum.equals(strip) ? [] : [`${name} does not come to its strip`]),
      ...(wanted && (first.lt(wanted) || right.lt(wanted)) ? [`${name} has not its margin`] : []),
      ...(right.sub(first).abs().gt(grid) ? [`${name} is not in the middle`] : []),
    ]
  })
