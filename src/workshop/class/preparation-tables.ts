import { formatSize } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'
import { number, type Table, text, withoutEmpty } from '../table.ts'
import type { PreparationList } from './preparation.ts'

/** What is done before a class as tables for a spreadsheet. */
export const preparationTables = (
  { title, cutting, scoring, ahead, packing }: PreparationList,
  unit: Unit,
): Table[] =>
  withoutEmpty([
    {
      name: 'Cut',
      title: `Cut before the class: ${title}`,
      columns: [
        text('stock'),
        text('sheet'),
        text('layout'),
        number('sheets'),
        number('stacks'),
        number('cuts of each'),
        number('minutes'),
      ],
      rows: cutting.map(({ stock, offcut, sheet, layout, sheets, stacks, cuts, minutes }) => [
        offcut ? `${stock}, offcut` : stock,
        formatSize(sheet, unit),
        layout,
        sheets,
        stacks,
        cuts,
        minutes,
      ]),
    },
    {
      name: 'Score',
      title: `Score before the class: ${title}`,
      columns: [text('piece'), text('lesson'), number('pieces'), number('scores of each'), number('minutes')],
      rows: scoring.map(({ piece, lesson, count, scores, minutes }) => [
        piece,
        lesson,
        count,
        scores,
        minutes,
      ]),
    },
    {
      name: 'Have ready',
      title: `Have ready: ${title}`,
      columns: [text('what'), number('for step'), text('lesson')],
      rows: ahead.map(({ words, step, lesson }) => [words, step, lesson]),
    },
    {
      name: 'Pack',
      title: `Pack: ${title}`,
      columns: [text('lesson'), number('kits'), number('items in each'), number('minutes')],
      rows: packing.map(({ lesson, kits, items, minutes }) => [lesson, kits, items, minutes]),
    },
  ])
