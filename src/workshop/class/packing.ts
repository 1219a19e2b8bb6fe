import { groupBy } from '../../length/group-by.ts'
import type { Listing } from '../listing.ts'
import { words } from '../listing.ts'
import type { ClassFile } from './class-file.ts'
import type { KitLabel } from './kit-labels.ts'

/** What is packed in each kit, with room to tick it off; kits that hold the same stand under one list of it. */
export function packingListing(title: string, labels: readonly KitLabel[]): Listing {
  return {
    title: `Packing: ${title}`,
    intro: `${labels.length} ${labels.length === 1 ? 'kit' : 'kits'}. Tick each off when its label is on.`,
    sections: [...groupBy(labels, (label) => label.title)].map(([lesson, kits]) => ({
      heading: lesson,
      columns: [words('kit'), words('chosen'), words('packed')],
      rows: kits.map(({ name, chosen }) => [name, chosen.join(', '), '']),
      note: `In each: ${kits[0]?.contents.join(', ') ?? ''}.`,
    })),
  }
}

/**
 * Who comes, with room to tick them off, and what the teacher must know of them. It is made for the teacher's own eyes:
 * no other list says it.
 */
export function attendanceListing(title: string, { guests }: Pick<ClassFile, 'guests'>): Listing {
  return {
    title: `Attendance: ${title}`,
    intro: `${guests.length} ${guests.length === 1 ? 'person' : 'people'}. Keep this sheet to yourself.`,
    sections: [
      {
        heading: 'Who comes',
        columns: [words('name'), words('here'), words('to know'), words('takes')],
        rows: guests.map(({ name, note = '', takes }) => [name, '', note, takes.join(', ')]),
      },
    ],
  }
}
