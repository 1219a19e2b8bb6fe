import type { Wording } from '../../wording/wording.ts'
import { named } from '../kit-tables.ts'
import { number, type Table, text, withoutEmpty } from '../table.ts'
import { planPiece } from './plan-piece.ts'
import type { PreparationList } from './preparation.ts'

/** What is done before a class as tables for a spreadsheet. */
export function preparationTables(list: PreparationList, wording: Wording): Table[] {
  const { title, ahead } = list
  const { say } = wording
  return withoutEmpty([
    ...workTables(list, wording),
    {
      ...named(say('class.have-ready'), title, wording),
      columns: [text(say('kit.what')), number(say('class.for-step')), text(say('kit.lesson'))],
      rows: ahead.map(({ words, step, lesson }) => [words, step, lesson]),
    },
    packTable(list, wording),
  ])
}

/** The same without what is to have ready, where that stands with the run sheet already. */
export const timedTables = (list: PreparationList, wording: Wording): Table[] =>
  withoutEmpty([...workTables(list, wording), packTable(list, wording)])

function workTables({ title, cutting, scoring }: PreparationList, wording: Wording): Table[] {
  const { say, name } = wording
  return [
    {
      name: say('class.cut'),
      title: say('kit.table-title', { table: say('class.cut-before'), title }),
      columns: [
        text(say('kit.stock')),
        text(say('class.sheet')),
        text(say('class.layout')),
        number(say('class.sheets')),
        number(say('class.stacks')),
        number(say('class.cuts-of-each')),
        number(say('class.minutes')),
      ],
      rows: cutting.map(({ stock, offcut, sheet, layout, sheets, stacks, cuts, minutes }) => [
        offcut ? say('sheets.offcut-of', { stock: name(stock) }) : name(stock),
        wording.size(sheet),
        layout,
        sheets,
        stacks,
        cuts,
        minutes,
      ]),
    },
    {
      name: say('class.score'),
      title: say('kit.table-title', { table: say('class.score-before'), title }),
      columns: [
        text(say('kit.piece')),
        text(say('kit.lesson')),
        number(say('class.pieces')),
        number(say('class.scores-of-each')),
        number(say('class.minutes')),
      ],
      rows: scoring.map(({ piece, lesson, count, scores, minutes }) => [
        planPiece(piece, wording),
        lesson,
        count,
        scores,
        minutes,
      ]),
    },
  ]
}

function packTable({ title, packing }: PreparationList, wording: Wording): Table {
  const { say } = wording
  return {
    ...named(say('class.pack'), title, wording),
    columns: [
      text(say('kit.lesson')),
      number(say('class.kits')),
      number(say('class.items-in-each')),
      number(say('class.minutes')),
    ],
    rows: packing.map(({ lesson, kits, items, minutes }) => [lesson, kits, items, minutes]),
  }
}
