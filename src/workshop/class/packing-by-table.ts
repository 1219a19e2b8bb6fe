import { groupBy } from '../../length/group-by.ts'
import { countText } from '../../lesson/count-text.ts'
import { type Section, words } from '../listing.ts'
import type { TableKit } from './at-tables.ts'
import type { KitLabel } from './kit-labels.ts'

/**
 * The packing list table by table: a row for each person with a column for the kit of each lesson, and then what the
 * table shares; the spare kits come last. A cell says what was chosen, and has room to tick.
 */
export function packingByTable(labels: readonly KitLabel[], tables: readonly TableKit[]): Section[] {
  const lessons = groupBy(labels, ({ title }) => title)
  const titles = [...lessons.keys()]
  const columns = [words('kit'), ...titles.map(words)]
  const kitRows = (kits: readonly KitLabel[]): string[][] =>
    [...groupBy(kits, ({ name }) => name)].map(([name, own]) => [
      name,
      ...titles.map((title) => {
        const kit = own.find((one) => one.title === title)
        return kit ? kit.chosen.join(', ') : '–'
      }),
    ])
  const spare = labels.filter(({ table }) => table === undefined)
  return [
    {
      heading: 'In each kit',
      columns: [words('lesson'), words('contents')],
      rows: [...lessons].map(([title, kits]) => [title, kits[0]?.contents.join(', ') ?? '']),
    },
    ...tables.map(({ name, shared }) => ({
      heading: name,
      columns,
      rows: [
        ...kitRows(labels.filter(({ table }) => table === name)),
        ...shared.map(({ item, amount }) => [
          amount.kind === 'count' ? `${countText(amount)} × ${item}` : item,
          ...titles.map(() => ''),
        ]),
      ],
    })),
    ...(spare.length > 0 ? [{ heading: 'Spare kits, with the tutor', columns, rows: kitRows(spare) }] : []),
  ]
}
