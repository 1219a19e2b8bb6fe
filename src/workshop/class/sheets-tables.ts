import { groupBy } from '../../length/group-by.ts'
import { numberIn } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import type { CuttingPlan, Layout, SheetPlan } from '../cutting/cutting.ts'
import { shortWords } from '../cutting/short-words.ts'
import { named, sizeCells, sizeColumns } from '../kit-tables.ts'
import { number, type Table, type TableColumn, text, withoutEmpty } from '../table.ts'
import { unitWords } from '../unit-words.ts'
import { planPiece } from './plan-piece.ts'
import { sheetWords } from './sheet-words.ts'
import { cutRows, letterOf } from './sheets-listing.ts'

/** A cutting plan as tables for a spreadsheet: the sheets, the cuts in their order, the pieces, what cannot be cut. */
export const sheetsTables = (title: string, plan: CuttingPlan, wording: Wording): Table[] =>
  withoutEmpty([
    sheetsTable(title, plan, wording),
    cutsTable(title, plan, wording),
    piecesTable(title, plan, wording),
    shortTable(title, plan, wording),
  ])

function sheetsTable(title: string, { plans }: CuttingPlan, wording: Wording): Table {
  const { say, name } = wording
  return {
    ...named(say('sheets.sheets'), title, wording),
    columns: [
      text(say('kit.stock')),
      ...sizeColumns(wording),
      number(say('class.sheets')),
      number(say('sheets.at-least')),
      text(say('sheets.the-fewest')),
      text(say('sheets.offcut')),
    ],
    rows: plans.map(({ stock, sheet, used, lowerBound, proven }) => [
      name(stock),
      ...sizeCells(sheet.size, wording),
      used,
      lowerBound,
      // Offcuts are used up first, however many there are.
      sheet.offcut ? '' : proven || used <= lowerBound ? say('sheets.proven') : say('sheets.perhaps'),
      sheet.offcut ? say('sheets.yes') : '',
    ]),
  }
}

/** A cut a row, as the trimmer is handled. */
function cutsTable(title: string, plan: CuttingPlan, wording: Wording): Table {
  const { say } = wording
  return {
    ...named(say('sheets.cutting'), title, wording),
    columns: [
      ...headColumns(wording),
      number(say('sheets.cut')),
      text(say('sheets.first')),
      number(say('sheets.set-in', { unit: unitWords(wording) })),
      text(say('kit.as-written')),
      text(say('sheets.against')),
      text(say('sheets.then')),
    ],
    rows: layoutsOf(plan, wording).flatMap(({ head, layout, of }) =>
      cutRows(of, layout, wording).map(({ first, set: written, against, after }, i) => {
        const set = layout.cuts[i]?.set
        return [...head, i + 1, first, set && numberIn(set, wording.unit), written, against, after]
      }),
    ),
  }
}

/** What comes out of each sheet. */
function piecesTable(title: string, plan: CuttingPlan, wording: Wording): Table {
  const { say, unit } = wording
  return {
    ...named(say('sheets.pieces'), title, wording),
    columns: [
      ...headColumns(wording),
      text(say('kit.lesson')),
      text(say('kit.piece')),
      number(say('sheets.on-each')),
      number(say('kit.in-all')),
      ...sizeColumns(wording),
    ],
    rows: layoutsOf(plan, wording).flatMap(({ head, layout }) =>
      [
        ...groupBy(layout.placed, ({ lesson, piece, width, height }) =>
          JSON.stringify([lesson, piece, numberIn(width, unit), numberIn(height, unit)]),
        ).values(),
      ].map((alike) => [
        ...head,
        alike[0]?.lesson,
        alike[0] && planPiece(alike[0].piece, wording),
        alike.length,
        alike.length * layout.times,
        ...(alike[0] ? sizeCells(alike[0], wording) : []),
      ]),
    ),
  }
}

function shortTable(title: string, { short }: CuttingPlan, wording: Wording): Table {
  const { say } = wording
  return {
    name: say('sheets.not-cut-table'),
    title: say('kit.table-title', { table: say('sheets.not-cut'), title }),
    columns: [
      text(say('kit.stock')),
      text(say('kit.piece')),
      text(say('kit.lesson')),
      number(say('kit.number')),
      text(say('sheets.why')),
      text(say('sheets.what-would-help')),
    ],
    rows: short.map(({ stock, piece, lesson, count, reason }) => {
      const name = wording.name(stock)
      const { why, suggestion } = shortWords(reason, name, wording)
      return [name, planPiece(piece, wording), lesson, count, why, suggestion]
    }),
  }
}

/** What every layout is known by. */
const headColumns = ({ say }: Wording): TableColumn[] => [
  text(say('kit.stock')),
  text(say('class.sheet')),
  text(say('class.layout')),
  number(say('sheets.alike')),
]

/** Every layout, with what its rows begin with: stock, sheet, its letter where there are several, how many are alike. */
const layoutsOf = ({ plans }: CuttingPlan, wording: Wording) =>
  plans.flatMap((plan) =>
    plan.layouts.map((layout, i) => ({ of: plan, layout, head: headOf(plan, layout, i, wording) })),
  )

const headOf = ({ stock, sheet, layouts }: SheetPlan, { times }: Layout, i: number, wording: Wording) => [
  wording.name(stock),
  sheetWords(sheet, wording),
  layouts.length > 1 ? letterOf(i) : undefined,
  times,
]
