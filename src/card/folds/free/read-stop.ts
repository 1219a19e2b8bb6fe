import { zero } from '../../../length/length.ts'
import { checkKeys, fieldsOf, type Reading, wordOf } from '../../reading.ts'
import { point } from '../../strip.ts'
import type { Segment, Stop } from '../../structure.ts'
import type { Entry } from '../../yaml.ts'
import type { Box } from './box.ts'
import { type Distance, distancesIn, type Edge, edges, level, startAt } from './distances.ts'
import { panelIn } from './read-words.ts'

/** An edge of a panel that comes to rest on a line of another, as it is written. */
export interface WrittenStop {
  readonly panel: string
  readonly edge: Edge
  readonly onto: string
  readonly at: Distance
}

const example = '{panel: front, edge: bottom, onto: floor, bottom: 2 in}'

/** Reads what stops the card: an edge of a panel, and how far from an edge of another one it comes to lie. */
export function readStop(reading: Reading, entry: Entry, names: readonly string[]): WrittenStop | undefined {
  const fields = fieldsOf(reading, entry, '`until` wants a group of keys', `Write \`until: ${example}\``)
  checkKeys(reading, fields, ['panel', 'edge', 'onto', ...edges], '`until`')
  const get = (key: string) => fields.get(key)?.value
  const panel = panelIn(reading, 'panel', get('panel'), names, entry.place)
  const onto = panelIn(reading, 'onto', get('onto'), names, entry.place)
  const edge = wordOf<Edge>(reading, get('edge'), ['bottom', 'top', 'left', 'right'])
  const { x, y } = distancesIn(reading, fields, 'until')
  const at = x ?? y ?? { edge: 'bottom', length: level }
  return panel && onto ? { panel, edge, onto, at } : undefined
}

/** The stop on the panels as they are cut; none when one of them is not there. */
export function stopOf({ panel, edge, onto, at }: WrittenStop, boxes: ReadonlyMap<string, Box>): Stop[] {
  const [one, other] = [boxes.get(panel), boxes.get(onto)]
  if (!one || !other) return []
  return [{ plate: panel, edge: lineIn(one, { edge, length: level }), onto, line: lineIn(other, at) }]
}

/** The line across a panel at a distance from one of its edges. */
function lineIn(box: Box, distance: Distance): Segment {
  const at = startAt(distance, box, zero)
  return distance.edge === 'left' || distance.edge === 'right'
    ? { from: point(at, box.bottom), to: point(at, box.top) }
    : { from: point(box.left, at), to: point(box.right, at) }
}
