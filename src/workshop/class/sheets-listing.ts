import { listOf } from '../../length/finding.ts'
import { formatLength, formatSize } from '../../length/format.ts'
import { groupBy } from '../../length/group-by.ts'
import type { Unit } from '../../length/length.ts'
import { cutByCut } from '../cutting/cut-by-cut.ts'
import type { CuttingPlan, Layout, PlacedPiece, SheetPlan } from '../cutting/cutting.ts'
import { count, type Listing, measure, type Section, words } from '../listing.ts'

/** A cutting plan as tables: how many sheets, then how each is cut, cut by cut. */
export function sheetsListing(title: string, plan: CuttingPlan, unit: Unit): Listing {
  const layouts = plan.plans.flatMap((one) =>
    one.layouts.map((layout, i) => layoutSection(one, layout, i, unit)),
  )
  return { ...sheetsHead(title, plan), sections: [...sheetsOverview(plan, unit), ...layouts] }
}

/** What stands above a cutting plan. */
export function sheetsHead(title: string, { plans }: CuttingPlan): Pick<Listing, 'title' | 'intro'> {
  const used = plans.filter(({ sheet }) => !sheet.offcut).reduce((sum, plan) => sum + plan.used, 0)
  return {
    title: `Cutting plan: ${title}`,
    intro: `${used} ${used === 1 ? 'sheet' : 'sheets'} in all. Every cut goes from edge to edge of what is in hand.`,
  }
}

/** How many sheets of each size are used, and what cannot be cut; tables without rows are left out. */
export const sheetsOverview = ({ plans, short }: CuttingPlan, unit: Unit): Section[] =>
  [
    {
      heading: 'Sheets',
      columns: [words('stock'), measure('sheet'), count('sheets'), words('is it the fewest')],
      rows: plans.map((plan) => [
        `${plan.stock}${plan.sheet.offcut ? ', offcut' : ''}`,
        formatSize(plan.sheet.size, unit),
        String(plan.used),
        fewestWords(plan),
      ]),
    },
    shortSection(short),
  ].filter(({ rows }) => rows.length > 0)

/** Whether fewer sheets would do, as far as it is known. */
const fewestWords = ({ proven, used, lowerBound, sheet }: SheetPlan): string => {
  if (sheet.offcut) return 'lies there already'
  if (proven || used <= lowerBound) return 'yes, proven'
  return lowerBound > 0 ? `perhaps; fewer than ${lowerBound} cannot be done` : 'perhaps'
}

function shortSection(short: CuttingPlan['short']): Section {
  return {
    heading: 'What cannot be cut',
    columns: [words('piece'), count('count'), words('stock'), words('why'), words('what would help')],
    rows: short.map(({ piece, count: n, stock, why, suggestion }) => [
      piece,
      String(n),
      stock,
      why.replaceAll('`', ''),
      suggestion.replaceAll('`', ''),
    ]),
  }
}

/** `dark blue card, 12 × 12 in: cut 7 like this` */
export const layoutHeading = (
  { stock, sheet, layouts }: SheetPlan,
  { times }: Layout,
  i: number,
  unit: Unit,
): string =>
  `${stock}, ${formatSize(sheet.size, unit)}${layouts.length > 1 ? `, ${letterOf(i)}` : ''}: cut ${times} like this`

export const letterOf = (i: number): string =>
  i < 26 ? String.fromCharCode(65 + i) : `${letterOf(Math.floor(i / 26) - 1)}${letterOf(i % 26)}`

function layoutSection(plan: SheetPlan, layout: Layout, i: number, unit: Unit): Section {
  return {
    heading: layoutHeading(plan, layout, i, unit),
    columns: [
      count('cut'),
      words('first'),
      measure('set the stop to'),
      words('against the stop'),
      words('then'),
    ],
    rows: cutRows(plan, layout, unit).map(({ number, first, set, against, after }) => [
      number,
      first,
      set,
      against,
      after,
    ]),
    note: `It gives ${piecesOf(layout)}.`,
  }
}

/** One cut as a trimmer is handled. */
export interface CutRow {
  readonly number: string
  /** Which strip is taken up, and whether what is in hand is turned: `take strip r, turn`, `turn a quarter`. */
  readonly first: string
  readonly set: string
  /** The edge that is held against the stop. */
  readonly against: string
  /** What is finished and gets its label, and what is laid aside with a letter. */
  readonly after: string
}

/** The cuts of a layout in their order. */
export function cutRows({ sheet }: Pick<SheetPlan, 'sheet'>, layout: Layout, unit: Unit): CutRow[] {
  const steps = cutByCut(layout, sheet.size)
  const nameOf = shortNamesIn(layout)
  return layout.cuts.map(({ set, against }, i) => {
    const { takes, turns, finished = [], aside = [] } = steps[i] ?? {}
    const labelled = groupBy(finished, nameOf)
    return {
      number: String(i + 1),
      first:
        takes === undefined ? (turns ? 'turn a quarter' : '') : `take strip ${takes}${turns ? ', turn' : ''}`,
      set: formatLength(set, unit),
      against: `${edgeWords[against]} edge`,
      after: [
        ...[...labelled].map(([name, list]) => `label ${list.length > 1 ? `${list.length} × ` : ''}${name}`),
        ...(aside.length > 0 ? [`lay ${aside.length > 1 ? 'strips' : 'strip'} ${listOf(aside)} aside`] : []),
      ].join(', '),
    }
  })
}

const edgeWords = { left: 'left', right: 'right', bottom: 'lower', top: 'upper' } as const

/** `2 × base and 4 × side strip`, with the lesson where it matters. */
export const piecesOf = (layout: Layout): string =>
  listOf([...groupBy(layout.placed, namesIn(layout))].map(([name, list]) => `${list.length} × ${name}`))

/** What a piece of a layout is called: with its lesson where there are several. */
function namesIn({ placed }: Pick<Layout, 'placed'>): (piece: PlacedPiece) => string {
  const lessons = new Set(placed.map(({ lesson }) => lesson))
  return ({ piece, lesson }) => (lessons.size > 1 ? `${piece} (${lesson})` : piece)
}

/** The same where only one of several lessons has a piece of that name on the sheet, without the lesson. */
function shortNamesIn({ placed }: Pick<Layout, 'placed'>): (piece: PlacedPiece) => string {
  const full = namesIn({ placed })
  const lessonsOf = groupBy(placed, ({ piece }) => piece)
  return (piece) =>
    new Set(lessonsOf.get(piece.piece)?.map(({ lesson }) => lesson)).size > 1 ? full(piece) : piece.piece
}
