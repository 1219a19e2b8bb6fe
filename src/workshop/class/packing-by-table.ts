import { groupBy } from '../../length/group-by.ts'
import { countInWords } from '../../lesson/amount-words.ts'
import type { Wording } from '../../wording/wording.ts'
import { type Section, ticks, toTick, words } from '../listing.ts'
import type { TableKit } from './at-tables.ts'
import type { KitLabel } from './kit-labels.ts'
import { tableWords } from './table-words.ts'

/**
 * The packing list table by table: a row for each person with a column for the kit of each lesson, and then what the
 * table shares; the spare kits come last. A cell has a box to tick, and says what was chosen; what is shared has its box before it.
 */
export function packingByTable(
  labels: readonly KitLabel[],
  tables: readonly TableKit[],
  wording: Wording,
): Section[] {
  const { say } = wording
  const lessons = groupBy(labels, ({ title }) => title)
  const titles = [...lessons.keys()]
  const tick = say('class.to-tick')
  const columns = [ticks(say('class.kit'), tick), ...titles.map((title) => ticks(title, tick))]
  const kitRows = (kits: readonly KitLabel[]): string[][] =>
    [...groupBy(kits, ({ name }) => name)].map(([name, own]) => [
      name,
      ...titles.map((title) => {
        const kit = own.find((one) => one.title === title)
        return kit ? toTick(kit.chosen.join(', ')) : '–'
      }),
    ])
  const spare = labels.filter(({ table }) => table === undefined)
  return [
    {
      heading: say('kit.in-each-kit'),
      columns: [words(say('kit.lesson')), words(say('class.contents'))],
      rows: [...lessons].map(([title, kits]) => [title, kits[0]?.contents.join(', ') ?? '']),
    },
    ...tables.map(({ name, shared }) => ({
      heading: tableWords(name, wording),
      columns,
      rows: [
        ...kitRows(labels.filter(({ table }) => table === name)),
        ...shared.map(({ item, amount }) => [
          toTick(amount.kind === 'count' ? `${countInWords(amount, wording)} × ${item}` : item),
          ...titles.map(() => ''),
        ]),
      ],
    })),
    ...(spare.length > 0 ? [{ heading: say('class.spare-with-tutor'), columns, rows: kitRows(spare) }] : []),
  ]
}
