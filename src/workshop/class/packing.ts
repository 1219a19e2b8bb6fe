import { groupBy } from '../../length/group-by.ts'
import type { Wording } from '../../wording/wording.ts'
import type { Listing, Section } from '../listing.ts'
import { box, ticks, words } from '../listing.ts'
import type { TableKit } from './at-tables.ts'
import type { KitLabel } from './kit-labels.ts'
import { packingByTable } from './packing-by-table.ts'
import { type Seated, seatingOf } from './seating.ts'
import { tableWords } from './table-words.ts'

/**
 * What is packed in each kit, with room to tick it off; kits that hold the same stand under one list of it. Where there
 * are tables it goes table by table, with what they share.
 */
export function packingListing(
  title: string,
  labels: readonly KitLabel[],
  tables: readonly TableKit[],
  wording: Wording,
): Listing {
  return {
    title: wording.say('class.packing-title', { title }),
    intro: wording.say('class.packing-intro', { kits: labels.length }),
    sections: tables.length > 0 ? packingByTable(labels, tables, wording) : byLesson(labels, wording),
  }
}

const byLesson = (labels: readonly KitLabel[], { say }: Wording): Section[] =>
  [...groupBy(labels, (label) => label.title)].map(([lesson, kits]) => ({
    heading: lesson,
    columns: [
      words(say('class.kit')),
      words(say('class.chosen')),
      ticks(say('class.packed'), say('class.to-tick')),
    ],
    rows: kits.map(({ name, chosen }) => [name, chosen.join(', '), box]),
    note: say('class.in-each', { contents: kits[0]?.contents.join(', ') ?? '' }),
  }))

/**
 * Who comes, with room to tick them off, and what the teacher must know of them. It is made for the teacher's own eyes:
 * no other list says it.
 */
export function attendanceListing(title: string, file: Seated, wording: Wording): Listing {
  const { guests } = file
  const { say, name: own } = wording
  const seating = seatingOf(file)
  return {
    title: say('class.attendance-title', { title }),
    intro: say('class.attendance-intro', { people: guests.length }),
    sections: [
      {
        heading: say('class.who-comes'),
        columns: [
          words(say('class.name')),
          ticks(say('class.here-now'), say('class.to-tick')),
          words(say('class.to-know')),
          words(say('class.takes')),
          ...(seating.length > 0 ? [words(say('class.table'))] : []),
        ],
        rows: guests.map(({ name, note = '', takes }, i) => [
          name,
          box,
          note,
          takes.map(own).join(', '),
          ...seating
            .filter(({ people }) => people.includes(i))
            .map(({ table }) => tableWords(table.name, wording)),
        ]),
      },
    ],
  }
}
