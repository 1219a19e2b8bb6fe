import { fieldsOf, lengthCell, type Reading } from '../../reading.ts'
import type { Fields } from '../../yaml.ts'

/** Reads `lengths`: lengths with names of their own, for use wherever a length is wanted, and in the lesson. */
export function readOwnLengths(reading: Reading, fields: Fields): void {
  const listed = fieldsOf(
    reading,
    fields.get('lengths')?.value,
    '`lengths` wants names with lengths',
    'Write one `name: length` a line',
  )
  for (const { key, value } of listed.values()) lengthCell(reading, key, value, '0', 'down')
}
