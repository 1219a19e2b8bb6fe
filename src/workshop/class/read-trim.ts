import { checkKeys, type Reading, report } from '../../card/reading.ts'
import type { Entry, Field } from '../../card/yaml.ts'
import { type Length, plus, type Size, zero } from '../../length/length.ts'
import type { Edge } from '../cutting/cutting.ts'
import { lengthIn } from './amounts.ts'

type Trim = Partial<Record<Edge, Length>>

const edges = ['left', 'right', 'top', 'bottom'] as const
/** Which key may stand in for an edge. */
const group = { left: 'sides', right: 'sides', top: 'ends', bottom: 'ends' } as const
const example = 'Write what is cut off, such as `trim: 5 mm` on every side, or `trim: {left: 5 mm}`'

/**
 * What is cut off the edges of a sheet, written as the border of a layer is: one length for all edges, a list
 * `[left, right, top, bottom]`, or a group of `left`, `right`, `top`, `bottom`, or `sides` and `ends`. What is not said
 * stays on.
 *
 * @returns undefined when nothing would be left of the sheet; that has been told.
 */
export function trimIn(reading: Reading, field: Field | undefined, size: Size): Trim | undefined {
  const entry = field?.value
  if (entry?.kind === 'map') checkKeys(reading, entry.fields, [...edges, 'sides', 'ends'], '`trim`')
  if (entry?.kind === 'list' && entry.items.length !== edges.length)
    report(
      reading,
      'value',
      entry.place,
      `A sheet has four edges, but ${entry.items.length} are listed`,
      'List left, right, top and bottom, such as `trim: [5 mm, 0 mm, 0 mm, 0 mm]`',
    )
  const known = new Map<Entry, Length | undefined>()
  const trim = Object.fromEntries(
    edges.flatMap((edge, i) => {
      const own = writtenFor(entry, edge, i)
      if (own && !known.has(own)) known.set(own, lengthIn(reading, own, 'trim'))
      const by = own && known.get(own)
      return by?.gt(0) ? [[edge, by]] : []
    }),
  ) as Trim
  const { left = zero, right = zero, top = zero, bottom = zero } = trim
  const isLeft = plus(left, right).lt(size.width) && plus(top, bottom).lt(size.height)
  if (isLeft) return trim
  report(
    reading,
    'value',
    field?.keyPlace ?? { line: 1, column: 1 },
    'Trimmed by this, nothing is left of the sheet',
    example,
  )
  return undefined
}

function writtenFor(entry: Entry | undefined, edge: (typeof edges)[number], i: number): Entry | undefined {
  if (entry?.kind === 'list') return entry.items[i]
  if (entry?.kind === 'map') return (entry.fields.get(edge) ?? entry.fields.get(group[edge]))?.value
  return entry
}
