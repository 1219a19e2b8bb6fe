import { checkKeys, fieldsOf, type Reading, report } from '../../reading.ts'
import { stockKeys } from '../../stock.ts'
import type { Field, Fields } from '../../yaml.ts'
import { acrossIn, alongIn, panelsIn, readStrip } from './read-strip.ts'
import type { WrittenSheet } from './written.ts'

/** The keys of a sheet. The base has them at the top of the card block. */
export const sheetKeys = ['strips', 'panels', 'creases', 'along', 'width', 'height']

/** Reads the base, which is described by the card block itself, and the further `sheets`. */
export function readSheets(reading: Reading, fields: Fields): WrittenSheet[] {
  const place = fields.get('fold')?.keyPlace ?? { line: 1, column: 1 }
  const listed = fieldsOf(
    reading,
    fields.get('sheets')?.value,
    '`sheets` wants names with keys',
    'Write a name, a colon, and its `panels:` indented below',
  )
  const others = [...listed.values()].map(({ key, keyPlace, value }) => {
    const own = fieldsOf(
      reading,
      value,
      `The sheet \`${key}\` wants a group of keys`,
      'Write its `width:` and `height:`, or its `panels:`, indented below',
    )
    checkKeys(reading, own, [...sheetKeys, ...stockKeys], `the sheet \`${key}\``)
    return readSheet(reading, key, keyPlace, own, own)
  })
  const base = fields.get('base')?.value
  const stock: Fields = base?.kind === 'map' ? base.fields : new Map()
  return [readSheet(reading, 'base', place, fields, stock), ...others]
}

function readSheet(
  reading: Reading,
  name: string,
  place: Field['keyPlace'],
  fields: Fields,
  stock: Fields,
): WrittenSheet {
  const along = alongIn(reading, fields, 'width')
  if (fields.has('strips')) {
    const across = acrossIn(reading, fields, name, along)
    return { name, place, strips: stripsIn(reading, fields, along), stock, ...(across && { across }) }
  }
  // A sheet without creases is a panel of its own name.
  const plain = name !== 'base' && !fields.has('panels') && !fields.has('creases')
  const across = plain ? fields.get('height') : acrossIn(reading, fields, name, along)
  const width = fields.get('width')?.value
  const strip = plain
    ? { along: 'width' as const, panels: [{ name, place, ...(width && { length: width }) }], folds: [] }
    : { along, ...panelsIn(reading, fields, name, place) }
  return { name, place, strips: [{ name, place, ...strip }], stock, ...(across && { across }) }
}

function stripsIn(
  reading: Reading,
  fields: Fields,
  along: WrittenSheet['strips'][number]['along'],
): WrittenSheet['strips'] {
  for (const key of ['panels', 'creases']) {
    const field = fields.get(key)
    if (field)
      report(
        reading,
        'value',
        field.keyPlace,
        `A sheet has either \`${key}\` of its own or \`strips\`, not both`,
        `Move \`${key}:\` into one of the strips`,
      )
  }
  const listed = fieldsOf(
    reading,
    fields.get('strips')?.value,
    '`strips` wants names with keys',
    'Write a name, a colon, and its `panels:` and `creases:` indented below',
  )
  return [...listed.values()].map((field) => readStrip(reading, field, along))
}
