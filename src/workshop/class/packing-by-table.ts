import { groupBy } from '../../length/group-by.ts'
import { countText } from '../../lesson/count-text.ts'
import { type Section, words } from '../listing.ts'
import type { TableKit } from './at-tables.ts'
import type { KitLabel } from './kit-labels.ts'

/** The packing list table by table: the kits of those who sit there, then what they share; the spare kits come last. */
export function packingByTable(labels: readonly KitLabel[], tables: readonly TableKit[]): Section[] {
  const lessons = groupBy(labels, ({ title }) => title)
  const several = lessons.size > 1
  const kitRow = ({ name, title, chosen }: KitLabel): string[] =>
    several ? [name, title, chosen.join(', '), ''] : [name, chosen.join(', '), '']
  const columns = [words('kit'), ...(several ? [words('lesson')] : []), words('chosen'), words('packed')]
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
        ...labels.filter(({ table }) => table === name).map(kitRow),
        ...shared.map(({ item, amount }) => [
          amount.kind === 'count' ? `${countText(amount)} × ${item}` : item,
          ...columns.slice(1).map(() => ''),
        ]),
      ],
    })),
    ...(spare.length > 0
      ? [{ heading: 'Spare kits, with the tutor', columns, rows: spare.map(kitRow) }]
      : []),
  ]
}
