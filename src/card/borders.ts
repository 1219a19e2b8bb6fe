import type { Length } from '../length/length.ts'
import type { Border } from './card.ts'
import { checkKeys, lengthCell, type Reading, report } from './reading.ts'
import type { Entry } from './yaml.ts'

const edges = ['left', 'right', 'top', 'bottom'] as const
/** Which key of a border may stand in for an edge. */
const group = { left: 'sides', right: 'sides', top: 'ends', bottom: 'ends' } as const

/**
 * Reads a border: one length for all edges, a list `[left, right, top, bottom]`, or a group of `left`, `right`,
 * `top`, `bottom`, or `sides` and `ends`. What is not said is flush. A border never shrinks on the ruler grid.
 *
 * @returns one computation for each edge; the names are `NAME.border.left` and so on.
 */
export function borderCells(
  reading: Reading,
  name: string,
  entry: Entry | undefined,
): Record<keyof Border, () => Length> {
  if (entry?.kind === 'list' && entry.items.length !== edges.length)
    report(
      reading,
      'value',
      entry.place,
      `A border has four edges, but ${entry.items.length} are listed`,
      'List left, right, top and bottom',
    )
  if (entry?.kind === 'map') checkKeys(reading, entry.fields, [...edges, 'sides', 'ends'], 'a border')
  const written = (edge: keyof Border, i: number): Entry | undefined => {
    if (entry?.kind === 'text') return entry
    if (entry?.kind === 'list') return entry.items[i]
    if (entry?.kind === 'map') return (entry.fields.get(edge) ?? entry.fields.get(group[edge]))?.value
    return undefined
  }
  const cells = edges.map((edge, i) =>
    lengthCell(reading, `${name}.border.${edge}`, written(edge, i), '0', 'up'),
  )
  return Object.fromEntries(edges.map((edge, i) => [edge, cells[i]])) as Record<keyof Border, () => Length>
}
