import { listOf } from '../../length/finding.ts'
import { formatLength, formatLengths, formatSize } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'
import { sentence } from '../flat/words.ts'
import type { Entry } from '../legend.ts'
import type { Wants } from './measures.ts'
import type { LetteringView } from './view.ts'

const unitName = { in: 'inches', mm: 'millimetres' } as const

/**
 * What the numbers mean, and what they do not say.
 *
 * @param overEach whether the width of each letter stands over it.
 */
export function letteringLegend(view: LetteringView, unit: Unit, wants: Wants, overEach: boolean): Entry[] {
  const { lettering, width } = view
  const widths = width
    ? `each letter is ${formatLength(width, unit)} wide`
    : overEach
      ? 'over each letter: its width'
      : `widths from left to right: ${formatLengths(lettering.widths, unit)}`
  return [
    ...(wants('marks')
      ? [{ text: `below: left edges in ${unitName[unit]}, from the left end` }, { text: widths }]
      : []),
    ...(wants('size') ? [{ text: `${lettering.on}: ${formatSize(view.size, unit)}` }] : []),
  ]
}

/** What a sighted reader takes from the drawing. */
export function letteringWords(view: LetteringView, unit: Unit): string {
  const { lettering, width, margins, stock } = view
  const { letters, marks, widths, gap } = lettering
  const one = letters.length === 1
  const wide = width
    ? `${one ? '' : 'each '}${formatLength(width, unit)} wide`
    : `${formatLengths(widths, unit)} wide`
  const margin = margins.left.equals(margins.right)
    ? `${formatLength(margins.left, unit)} at both ends`
    : `${formatLength(margins.left, unit)} at the left end and ${formatLength(margins.right, unit)} at the right end`
  return [
    `${sentence(lettering.on)}, ${stock.name}, ${formatSize(view.size, unit)}, width first, with the ${one ? 'letter' : 'letters'} ${listOf(letters)}, ${wide}.`,
    `Left ${one ? 'edge' : 'edges'} at ${formatLengths(marks, unit)} from the left end.`,
    ...(one ? [] : [`The gap between two letters is ${formatLength(gap, unit)}.`]),
    `Free: ${margin}.`,
    ...(view.back ? ['Seen from the outside.'] : []),
  ].join(' ')
}
