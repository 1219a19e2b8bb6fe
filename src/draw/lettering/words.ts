import type { Wording } from '../../wording/wording.ts'
import type { Entry } from '../legend.ts'
import { sentence } from '../phrases.ts'
import type { Wants } from './measures.ts'
import type { LetteringView } from './view.ts'

/**
 * What the numbers mean, and what they do not say.
 *
 * @param overEach whether the width of each letter stands over it.
 */
export function letteringLegend(
  view: LetteringView,
  wording: Wording,
  wants: Wants,
  overEach: boolean,
): Entry[] {
  const { say } = wording
  const { lettering, width } = view
  const widths = width
    ? say('figures.letter-width', { width: wording.length(width) })
    : overEach
      ? say('figures.letter-width-over')
      : say('figures.letter-widths', { widths: wording.lengths(lettering.widths) })
  return [
    ...(wants('marks')
      ? [{ text: say('figures.letter-marks-below', { unit: wording.unit }) }, { text: widths }]
      : []),
    ...(wants('size')
      ? [
          {
            text: say('figures.size-of', {
              piece: wording.name(lettering.on),
              size: wording.size(view.size),
            }),
          },
        ]
      : []),
  ]
}

/** What a sighted reader takes from the drawing. */
export function letteringWords(view: LetteringView, wording: Wording): string {
  const { say } = wording
  const { lettering, width, margins, stock } = view
  const { letters, marks, widths, gap } = lettering
  const count = letters.length
  return [
    say('figures.letters-on-strip', {
      piece: sentence(wording.name(lettering.on)),
      stock: wording.name(stock.name),
      size: wording.size(view.size),
      count,
      letters: wording.list(letters),
    }),
    width
      ? say('figures.letters-all-wide', { count, width: wording.length(width) })
      : say('figures.letters-wide', { widths: wording.lengths(widths) }),
    say('figures.letter-marks', { count, marks: wording.lengths(marks) }),
    ...(count === 1 ? [] : [say('figures.letter-gap', { gap: wording.length(gap) })]),
    margins.left.equals(margins.right)
      ? say('figures.free-at-both', { width: wording.length(margins.left) })
      : say('figures.free-at-ends', {
          left: wording.length(margins.left),
          right: wording.length(margins.right),
        }),
    ...(view.back ? [say('figures.seen-from-outside')] : []),
  ].join(' ')
}
