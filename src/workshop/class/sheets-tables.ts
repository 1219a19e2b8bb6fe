import { formatSize } from '../../length/format.ts'
import { groupBy } from '../../length/group-by.ts'
import { numberIn, type Unit } from '../../length/length.ts'
import type { CuttingPlan, Layout, SheetPlan } from '../cutting/cutting.ts'
import { sizeCells, sizeColumns } from '../kit-tables.ts'
import { number, type Table, text, withoutEmpty } from '../table.ts'
import { cutRows, letterOf } from './sheets-listing.ts'

/** A cutting plan as tables for a spreadsheet: the sheets, the cuts in their order, the pieces, what cannot be cut. */
export const sheetsTables = (title: string, plan: CuttingPlan, unit: Unit): Table[] =>
  withoutEmpty([
    sheetsTable(title, plan, unit),
    cutsTable(title, plan, unit),
    piecesTable(title, plan, unit),
    shortTable(title, plan),
  ])

function sheetsTable(title: string, { plans }: CuttingPlan, unit: Unit): Table {
  return {
    name: 'Sheets',
    title: `Sheets: ${title}`,
    columns: [
      text('stock'),
      ...sizeColumns(unit),
      number('sheets'),
      number('at least'),
      text('the fewest'),
      text('offcut'),
    ],
    rows: plans.map(({ stock, sheet, used, lowerBound, proven }) => [
      stock,
      ...sizeCells(sheet.size, unit),
      used,
      lowerBound,
      // Offcuts are used up first, however many there are.
      sheet.offcut ? '' : proven || used <= lowerBound ? 'proven' : 'perhaps',
      sheet.offcut ? 'yes' : '',
    ]),
  }
}

/** A cut a row, as the trimmer is handled. */
function cutsTable(title: string, plan: CuttingPlan, unit: Unit): Table {
  return {
    name: 'Cutting',
    title: `Cutting: ${title}`,
    columns: [
      text('stock'),
      text('sheet'),
      text('layout'),
      number('sheets alike'),
      number('cut'),
      text('first'),
      number(`set the stop to, ${unit}`),
      text('as written'),
      text('against the stop'),
      text('then'),
    ],
    rows: layoutsOf(plan, unit).flatMap(({ head, layout, of }) =>
      cutRows(of, layout, unit).map(({ first, set: written, against, after }, i) => {
        const set = layout.cuts[i]?.set
        return [...head, i + 1, first, set && numberIn(set, unit), written, against, after]
      }),
    ),
  }
}

/** What comes out of each sheet. */
function piecesTable(title: string, plan: CuttingPlan, unit: Unit): Table {
  return {
    name: 'Pieces',
    title: `Pieces: ${title}`,
    columns: [
      text('stock'),
      text('sheet'),
      text('layout'),
      number('sheets alike'),
      text('lesson'),
      text('piece'),
      number('on each sheet'),
      number('in all'),
      ...sizeColumns(unit),
    ],
    rows: layoutsOf(plan, unit).flatMap(({ head, layout }) =>
      [
        ...groupBy(layout.placed, ({ lesson, piece, width, height }) =>
          JSON.stringify([lesson, piece, numberIn(width, unit), numberIn(height, unit)]),
        ).values(),
      ].map((alike) => [
        ...head,
        alike[0]?.lesson,
        alike[0]?.piece,
        alike.length,
        alike.length * layout.times,
        ...(alike[0] ? sizeCells(alike[0], unit) : []),
      ]),
    ),
  }
}

const shortTable = (title: string, { short }: CuttingPlan): Table => ({
  name: 'Not cut',
  title: `What cannot be cut: ${title}`,
  columns: [
    text('stock'),
    text('piece'),
    text('lesson'),
    number('number'),
    text('why'),
    text('what would help'),
  ],
  rows: short.map(({ stock, piece, lesson, count, why, suggestion }) => [
    stock,
    piece,
    lesson,
    count,
    why.replaceAll('`', ''),
    suggestion.replaceAll('`', ''),
  ]),
})

/** Every layout, with what its rows begin with: stock, sheet, its letter where there are several, how many are alike. */
const layoutsOf = ({ plans }: CuttingPlan, unit: Unit) =>
  plans.flatMap((plan) =>
    plan.layouts.map((layout, i) => ({ of: plan, layout, head: headOf(plan, layout, i, unit) })),
  )

const headOf = ({ stock, sheet, layouts }: SheetPlan, { times }: Layout, i: number, unit: Unit) => [
  stock,
  `${formatSize(sheet.size, unit)}${sheet.offcut ? ', offcut' : ''}`,
  layouts.length > 1 ? letterOf(i) : undefined,
  times,
]
