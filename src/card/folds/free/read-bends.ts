import { listOf } from '../../../length/finding.ts'
import { checkKeys, type Reading, report } from '../../reading.ts'
import type { Bend } from '../../structure.ts'
import type { Entry, Field } from '../../yaml.ts'
import { degreesIn, groupsIn, panelIn } from './read-words.ts'
import { panelNames, type WrittenSheet } from './written.ts'

/** Pairs of panels that a crease joins. */
export const pairsOf = (sheets: readonly WrittenSheet[]): (readonly [string, string])[] =>
  sheets.flatMap(({ strips }) =>
    strips.flatMap(({ panels }) =>
      panels.slice(1).map((panel, i) => [panels[i]?.name ?? '', panel.name] as const),
    ),
  )

/** How far a crease is bent, in words. */
const words = { flat: 0, folded: 180 }
const example = '{between: [front, back], bent: 90}'

/** Reads creases and how far each is bent: `{between: [front, back], bent: 90}`; 0 is flat, 180 folded on itself. */
export function readBends(
  reading: Reading,
  field: Field | undefined,
  sheets: readonly WrittenSheet[],
): Bend[] {
  return groupsIn(reading, field, example).flatMap(({ fields, place }): Bend[] => {
    checkKeys(reading, fields, ['between', 'bent'], 'a crease')
    const hinge = creaseIn(reading, fields.get('between')?.value, sheets, place)
    const bent = fields.get('bent')?.value
    if (!bent)
      report(
        reading,
        'missing-key',
        place,
        'It is not said how far this crease is bent',
        'Add `bent:` with `flat`, `folded` or degrees: 0 is flat, 180 is folded on itself',
      )
    const degrees = bent && degreesIn(reading, bent, [0, 180], words)
    return hinge && degrees !== undefined ? [{ hinge, degrees }] : []
  })
}

function creaseIn(
  reading: Reading,
  entry: Entry | undefined,
  sheets: readonly WrittenSheet[],
  place: Entry['place'],
): [string, string] | undefined {
  const items = entry?.kind === 'list' ? entry.items : []
  if (items.length !== 2) {
    report(
      reading,
      'value',
      entry?.place ?? place,
      '`between` wants the two panels that a crease joins',
      `Write \`${example}\``,
    )
    return undefined
  }
  const [one, other] = items.map((item) => panelIn(reading, 'between', item, panelNames(sheets), place))
  if (!one || !other) return undefined
  const pairs = pairsOf(sheets)
  if (pairs.some((pair) => pair.includes(one) && pair.includes(other))) return [one, other]
  const beside = pairs.filter((pair) => pair.includes(one)).map(([a, b]) => `\`${a === one ? b : a}\``)
  report(
    reading,
    'unknown-crease',
    entry?.place ?? place,
    `There is no crease between \`${one}\` and \`${other}\``,
    beside.length > 0
      ? `\`${one}\` has a crease to ${listOf([...new Set(beside)])}`
      : `\`${one}\` has no creases`,
  )
  return undefined
}
