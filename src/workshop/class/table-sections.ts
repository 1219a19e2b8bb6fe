import { say } from '../kit-listing.ts'
import { measure, type Section, words } from '../listing.ts'
import type { ClassKit } from './class-kit.ts'

/** What lies on each table. */
export const tableSections = ({ tables, unit, lessons }: ClassKit): Section[] =>
  tables.map(({ name, people, kits, shared }) => ({
    heading: `On ${/^table\b/i.test(name) ? name : `the table “${name}”`}: ${people} ${people === 1 ? 'person' : 'people'}`,
    columns: [words('item'), measure('how much'), words('rule')],
    rows: [
      ...kits.map(({ lesson, count }) => [
        lessons.length > 1 ? `kits of “${lesson}”` : 'kits',
        String(count),
        '',
      ]),
      ...shared.map(({ item, amount, rule }) => [item, say(amount, unit), rule ?? '']),
    ],
  }))

/** The spare kits stay with the tutor, where tables are said. */
export const spareSection = ({ tables, lessons, spare }: ClassKit): Section[] =>
  tables.length === 0 || spare === 0
    ? []
    : [
        {
          heading: 'Spare kits, with the tutor',
          columns: [words('item'), measure('how much')],
          rows: lessons.map(({ taught, kit }) => [
            lessons.length > 1 ? `kits of “${kit.lesson}”` : 'kits',
            String(taught.kits - taught.people),
          ]),
        },
      ]
