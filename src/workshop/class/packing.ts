import { groupBy } from '../../length/group-by.ts'
import type { Listing, Section } from '../listing.ts'
import { words } from '../listing.ts'
import type { TableKit } from './at-tables.ts'
import type { KitLabel } from './kit-labels.ts'
import { packingByTable } from './packing-by-table.ts'
import { type Seated, seatingOf } from './seating.ts'

/**
 * What is packed in each kit, with room to tick it off; kits that hold the same stand under one list of it. Where there
 * are tables it goes table by table, with what they share.
 */
export function packingListing(
  title: string,
  labels: readonly KitLabel[],
  tables: readonly TableKit[] = [],
): Listing {
  return {
    title: `Packing: ${title}`,
    intro: `${labels.length} ${labels.length === 1 ? 'kit' : 'kits'}. Tick each off when its label is on.`,
    sections: tables.length > 0 ? packingByTable(labels, tables) : byLesson(labels),
  }
}

const byLesson = (labels: readonly KitLabel[]): Section[] =>
  [...groupBy(labels, (label) => label.title)].map(([lesson, kits]) => ({
    heading: lesson,
    columns: [words('kit'), words('chosen'), words('packed')],
    rows: kits.map(({ name, chosen }) => [name, chosen.join(', '), '']),
    note: `In each: ${kits[0]?.contents.join(', ') ?? ''}.`,
  }))

/**
 * Who comes, with room to tick them off, and what the teacher must know of them. It is made for the teacher's own eyes:
 * no other list says it.
 */
export function attendanceListing(title: string, file: Seated): Listing {
  const { guests } = file
  const seating = seatingOf(file)
  return {
    title: `Attendance: ${title}`,
    intro: `${guests.length} ${guests.length === 1 ? 'person' : 'people'}. Keep this sheet to yourself.`,
    sections: [
      {
        heading: 'Who comes',
        columns: [
          words('name'),
          words('here'),
          words('to know'),
          words('takes'),
          ...(seating.length > 0 ? [words('table')] : []),
        ],
        rows: guests.map(({ name, note = '', takes }, i) => [
          name,
          '',
          note,
          takes.join(', '),
          ...seating.filter(({ people }) => people.includes(i)).map(({ table }) => table.name),
        ]),
      },
    ],
  }
}
