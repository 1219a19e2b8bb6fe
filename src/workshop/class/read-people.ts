import { checkKeys, type Reading, report } from '../../card/reading.ts'
import type { Entry, Field } from '../../card/yaml.ts'
import type { Place } from '../../length/finding.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import { countIn, mostPeople } from './amounts.ts'
import type { Guest } from './class-file.ts'

const example = 'Write `people: 12`, or a list of names'

/** How many come: a number, or a list of names with what each takes and what the teacher must know. */
export function peopleIn(
  reading: Reading,
  field: Field | undefined,
  start: Place,
): { people: number; guests: readonly Guest[] } | undefined {
  if (!field) {
    report(reading, 'missing-key', start, 'The class does not say how many people come', 'Add `people: 12`')
    return undefined
  }
  if (field.value.kind !== 'list') {
    const people = countIn(reading, field.value, 'people', 1, mostPeople)
    return people === undefined ? undefined : { people, guests: [] }
  }
  const guests = field.value.items.flatMap((item): Guest[] => {
    if (item.kind === 'text') return [{ name: item.text.trim(), takes: [] }]
    if (item.kind !== 'map') {
      report(reading, 'value', item.place, 'A name is wanted here', example)
      return []
    }
    checkKeys(reading, item.fields, ['name', 'takes', 'table', 'note'], 'a person')
    const text = (key: string): string[] =>
      textsOf(reading, item.fields.get(key)?.value, `\`${key}\` wants a text`, `Write \`${key}: …\``).map(
        (t) => t.text.trim(),
      )
    const [name] = text('name')
    if (name === undefined)
      report(reading, 'missing-key', item.place, 'This person has no name', 'Add `name:`')
    const note = text('note').join(', ')
    return [
      { name: name ?? '', takes: text('takes'), ...tableOf(reading, item), ...(note !== '' && { note }) },
    ]
  })
  if (guests.length > mostPeople) {
    report(reading, 'too-many', field.value.place, `\`people\` can be ${mostPeople} at most`, example)
    return { people: mostPeople, guests: guests.slice(0, mostPeople) }
  }
  if (guests.length === 0) {
    report(reading, 'value', field.value.place, 'Nobody comes to this class', example)
    return undefined
  }
  return { people: guests.length, guests }
}

function tableOf(reading: Reading, { fields }: Entry & { kind: 'map' }): Pick<Guest, 'table'> {
  const entry = fields.get('table')?.value
  const [text] = textsOf(reading, entry, '`table` wants the name of one', 'Write `table: window`')
  return text ? { table: { name: text.text.trim(), place: text.place } } : {}
}
