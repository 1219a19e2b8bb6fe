import { mustCover } from '../length/grid.ts'
import type { Length } from '../length/length.ts'
import type { Border } from './card.ts'
import { checkKeys, lengthCell, type Reading, report } from './reading.ts'
import type { Cell } from './scope.ts'
import type { Entry } from './yaml.ts'

const edges = ['left', 'right', 'top', 'bottom'] as const
/** What an edge is towards the spine or away from it. */
const spineEdges = {
  left: { left: 'spine', right: 'opening' },
  top: { top: 'spine', bottom: 'opening' },
} as const
/** The keys of a border; on a card with a spine also its two edges by that. */
export const borderKeys = [...edges, 'sides', 'ends'] as const
export const spineBorderKeys = ['spine', 'opening'] as const
/** Which key of a border may stand in for an edge. */
const group = { left: 'sides', right: 'sides', top: 'ends', bottom: 'ends' } as const

/**
 * Reads a border: one length for all edges, a list `[left, right, top, bottom]`, or a group of `left`, `right`,
 * `top`, `bottom`, or `sides` and `ends`; on a card with a spine also of `spine` and `opening`, the edges towards it and
 * away from it, wherever it is. The closer word counts: an edge by its own name, then by the spine, then the group. What
 * is not said is flush. A border never shrinks on the ruler grid. Each may
 * be `auto`.
 *
 * @param auto the border of an edge where the lesson says so, before it goes on the ruler.
 * @param spine where it is, on a card that can have it there or there.
 * @returns one computation for each edge; the names are `NAME.border.left` and so on.
 */
export function borderCells(
  reading: Reading,
  name: string,
  entry: Entry | undefined,
  auto: (edge: keyof Border) => Length,
  spine?: 'left' | 'top',
): Record<keyof Border, Cell<Length>> {
  if (entry?.kind === 'list' && entry.items.length !== edges.length)
    report(
      reading,
      'value',
      entry.place,
      `A border has four edges, but ${entry.items.length} are listed`,
      'List left, right, top and bottom',
    )
  const bySpine: Partial<Record<keyof Border, string>> = spine ? spineEdges[spine] : {}
  const keys = [...borderKeys, ...Object.values(bySpine)]
  if (entry?.kind === 'map') checkKeys(reading, entry.fields, keys, 'a border')
  const written = (edge: keyof Border, i: number): Entry | undefined => {
    if (entry?.kind === 'text') return entry
    if (entry?.kind === 'list') return entry.items[i]
    if (entry?.kind !== 'map') return undefined
    const field = [edge, bySpine[edge] ?? '', group[edge]].flatMap((key) => entry.fields.get(key) ?? [])[0]
    return field?.value
  }
  const cells = edges.map((edge, i) => {
    const own = written(edge, i)
    const path = `${name}.border.${edge}`
    if (!isAuto(own)) return lengthCell(reading, path, own, '0', 'up')
    const cell = reading.scope.cell(path, () => {
      const exact = reading.held?.get(path) ?? auto(edge)
      reading.origins?.set(path, { from: 'auto', text: 'auto', exact, round: 'up', ...placeOf(own) })
      return mustCover(exact, reading.grid)
    })
    reading.scope.define(path, () => ({ kind: 'length', value: cell() }))
    return cell
  })
  return Object.fromEntries(edges.map((edge, i) => [edge, cells[i]])) as Record<keyof Border, Cell<Length>>
}

const placeOf = (entry: Entry | undefined) => (entry ? { place: entry.place } : {})

const isAuto = (entry: Entry | undefined): boolean => entry?.kind === 'text' && entry.text.trim() === 'auto'
