import { checkKeys, fieldsOf, type Reading, report, wordOf } from '../../reading.ts'
import type { Fold } from '../../structure.ts'
import type { Entry, Field, Fields } from '../../yaml.ts'
import { type Along, acrossOf, type WrittenPanel, type WrittenStrip } from './written.ts'

/** The keys of a strip that is one of several of its sheet. */
export const stripKeys = ['panels', 'creases', 'along', 'width', 'height'] as const

/** Reads one strip of several. `along` is what it has when it does not say. */
export function readStrip(
  reading: Reading,
  { key: name, keyPlace: place, value }: Field,
  along: Along,
): WrittenStrip {
  const fields = fieldsOf(
    reading,
    value,
    `The strip \`${name}\` wants a group of keys`,
    'Write its `panels:` and `creases:` indented below',
  )
  checkKeys(reading, fields, stripKeys, `the strip \`${name}\``)
  const own = alongIn(reading, fields, along)
  const across = acrossIn(reading, fields, name, own)
  return { name, place, along: own, ...panelsIn(reading, fields, name, place), ...(across && { across }) }
}

export const alongIn = (reading: Reading, fields: Fields, usual: Along): Along =>
  fields.has('along') ? wordOf<Along>(reading, fields.get('along')?.value, ['width', 'height']) : usual

/** The key that says how long the creases are; the other one is what its panels add up to. */
export function acrossIn(reading: Reading, fields: Fields, name: string, along: Along): Field | undefined {
  const sum = fields.get(along)
  if (sum)
    report(
      reading,
      'value',
      sum.keyPlace,
      `The ${along} of \`${name}\` is what its panels add up to`,
      `Take \`${along}:\` out`,
    )
  return fields.get(acrossOf(along))
}

/** Reads `panels` and the `creases` between them. */
export function panelsIn(
  reading: Reading,
  fields: Fields,
  name: string,
  place: WrittenStrip['place'],
): Pick<WrittenStrip, 'panels' | 'folds'> {
  const listed = fieldsOf(
    reading,
    fields.get('panels')?.value,
    '`panels` wants names with lengths',
    'Write one `name: length` a line',
  )
  const panels = [...listed.values()].map(
    ({ key, keyPlace, value }): WrittenPanel => ({
      name: key,
      place: keyPlace,
      ...(value.kind !== 'empty' && { length: value }),
    }),
  )
  if (panels.length === 0)
    report(
      reading,
      'missing-key',
      fields.get('panels')?.keyPlace ?? place,
      name === 'base' ? 'A free card lists its panels' : `The strip \`${name}\` lists no panels`,
      'Add `panels:` with one `name: length` a line, from left to right',
    )
  const at = fields.get('panels')?.keyPlace ?? place
  return { panels, folds: foldsIn(reading, fields.get('creases')?.value, panels.length, at) }
}

function foldsIn(
  reading: Reading,
  entry: Entry | undefined,
  panels: number,
  place: WrittenStrip['place'],
): Fold[] {
  const items = entry?.kind === 'list' ? entry.items : []
  if (panels > 0 && items.length !== panels - 1)
    report(
      reading,
      'value',
      entry?.place ?? place,
      `There are ${panels} panels and ${items.length} creases, expected a crease between each panel and the next`,
      panels === 1
        ? 'Take `creases:` out'
        : `List ${panels - 1} creases, such as \`creases: [valley, mountain]\``,
    )
  return items.map((item) => wordOf<Fold>(reading, item, ['valley', 'mountain']))
}
