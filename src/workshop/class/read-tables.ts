import { checkKeys, type Reading, report } from '../../card/reading.ts'
import type { Entry, Field } from '../../card/yaml.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import { countIn } from './amounts.ts'
import type { SeatTable } from './seat-table.ts'
import { tableNumber } from './table-words.ts'

const cure = 'Write `tables: 4`, names with seats such as `tables: {window: 6, stove: 4}`, or a list of names'

/** Where people sit: how many tables, a list of names, or names with how many fit. */
export function tablesIn(reading: Reading, field: Field | undefined): SeatTable[] {
  if (!field || field.value.kind === 'empty') return []
  const { value, keyPlace: place } = field
  if (value.kind === 'text') {
    const count = countIn(reading, value, 'tables', 1)
    return Array.from({ length: Math.min(count ?? 0, most) }, (_, i) => ({ name: tableNumber(i + 1), place }))
  }
  const tables =
    value.kind === 'map'
      ? [...value.fields.values()].map((one) => withSeats(reading, one.key, one.value, one.keyPlace))
      : value.items.flatMap((item) => tableOf(reading, item))
  for (const [i, { name, place: at }] of tables.entries())
    if (tables.findIndex((other) => other.name === name) < i)
      report(
        reading,
        'value',
        at,
        `There is a table \`${name}\` already`,
        'Give each table a name of its own',
      )
  return tables
}

/** Nobody has more tables: whoever writes more has slipped. */
const most = 1000

function tableOf(reading: Reading, item: Entry): SeatTable[] {
  if (item.kind === 'text') return [{ name: item.text.trim(), place: item.place }]
  if (item.kind !== 'map') {
    report(reading, 'value', item.place, 'The name of a table is wanted here', cure)
    return []
  }
  checkKeys(reading, item.fields, ['name', 'seats'], 'a table')
  const name = item.fields.get('name')
  const [text] = textsOf(reading, name?.value, 'The name of a table is wanted here', cure)
  if (!text) {
    report(reading, 'missing-key', item.place, 'This table has no name', 'Add `name:`')
    return []
  }
  return [withSeats(reading, text.text.trim(), item.fields.get('seats')?.value, text.place)]
}

function withSeats(
  reading: Reading,
  name: string,
  entry: Entry | undefined,
  place: SeatTable['place'],
): SeatTable {
  const seats = countIn(reading, entry, 'seats', 1)
  return { name, place, ...(seats !== undefined && { seats }) }
}
