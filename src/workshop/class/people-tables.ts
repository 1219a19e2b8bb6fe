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
): Table[] =>
  withoutEmpty([
    {
      name: 'Kits',
      title: `Kits to pack: ${title}`,
      columns: [number('number'), text('kit'), text('lesson'), text('chosen')],
      rows: labels.map(({ name, title: lesson, chosen }, i) => [i + 1, name, lesson, chosen.join(', ')]),
    },
    {
      name: 'Guests',
      title: `Who comes: ${title}`,
      columns: [number('number'), text('name'), text('takes')],
      rows: guests.map(({ name, takes }, i) => [i + 1, name, takes.join(', ')]),
    },
  ])
