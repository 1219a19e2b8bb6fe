import { listOf } from '../../length/finding.ts'
import { formatLength, formatSize } from '../../length/format.ts'
import { groupBy } from '../../length/group-by.ts'
import type { Unit } from '../../length/length.ts'
import type { CuttingPlan, Layout, SheetPlan } from '../cutting/cutting.ts'
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
  return proven || used <= lowerBound ? 'yes, proven' : `at least ${lowerBound} are needed`
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
    columns: [count('cut'), measure('set the stop to'), words('against the stop'), words('turn')],
    rows: cutRows(layout, unit),
    note: `It gives ${piecesOf(layout)}.`,
  }
}

/** The cuts as a trimmer is handled: what is set, what is held, and when the sheet is turned a quarter. */
export const cutRows = ({ cuts }: Layout, unit: Unit): string[][] =>
  cuts.map(({ set, against, across }, i) => [
    String(i + 1),
    formatLength(set, unit),
    `${edgeWords[against]} edge`,
    i > 0 && cuts[i - 1]?.across !== across ? 'a quarter' : '',
  ])

const edgeWords = { left: 'left', right: 'right', bottom: 'lower', top: 'upper' } as const

/** `2 × base and 4 × side strip`, with the lesson where it matters. */
export function piecesOf({ placed }: Layout): string {
  const lessons = new Set(placed.map(({ lesson }) => lesson))
  const kinds = groupBy(placed, ({ piece, lesson }) => (lessons.size > 1 ? `${piece} (${lesson})` : piece))
  return listOf([...kinds].map(([name, list]) => `${list.length} × ${name}`))
}
