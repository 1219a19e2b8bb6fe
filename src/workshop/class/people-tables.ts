import type { Wording } from '../../wording/wording.ts'
import { number, type Table, text, withoutEmpty } from '../table.ts'
import type { ClassFile } from './class-file.ts'
import type { KitLabel } from './kit-labels.ts'

/**
 * Who comes and what is in whose kit, as tables for a spreadsheet. What a teacher must know of a person is not in them:
 * workbooks are handed on.
 */
export const peopleTables = (
  title: string,
  { guests }: Pick<ClassFile, 'guests'>,
  labels: readonly KitLabel[],
  wording: Wording,
): Table[] => {
  const { say } = wording
  return withoutEmpty([
    {
      name: say('class.kits-table'),
      title: say('kit.table-title', { table: say('class.kits-to-pack'), title }),
      columns: [
        number(say('kit.number')),
        text(say('class.kit')),
        text(say('kit.lesson')),
        text(say('class.chosen')),
      ],
      rows: labels.map(({ name, title: lesson, chosen }, i) => [i + 1, name, lesson, chosen.join(', ')]),
    },
    {
      name: say('class.guests'),
      title: say('kit.table-title', { table: say('class.who-comes'), title }),
      columns: [number(say('kit.number')), text(say('class.name')), text(say('class.takes'))],
      rows: guests.map(({ name, takes }, i) => [i + 1, name, takes.map(wording.name).join(', ')]),
    },
  ])
}
