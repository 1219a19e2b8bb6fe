import { groupBy } from '../../length/group-by.ts'
import type { Wording } from '../../wording/wording.ts'
import { cutByCut } from '../cutting/cut-by-cut.ts'
import type { CuttingPlan, Layout, PlacedPiece, SheetPlan } from '../cutting/cutting.ts'
import { shortWords } from '../cutting/short-words.ts'
import { count, type Listing, measure, type Section, words } from '../listing.ts'
import { planPiece } from './plan-piece.ts'

/** A cutting plan as tables: how many sheets, then how each is cut, cut by cut. */
export function sheetsListing(title: string, plan: CuttingPlan, wording: Wording): Listing {
  const layouts = plan.plans.flatMap((one) =>
    one.layouts.map((layout, i) => layoutSection(one, layout, i, wording)),
  )
  return { ...sheetsHead(title, plan, wording), sections: [...sheetsOverview(plan, wording), ...layouts] }
}

/** What stands above a cutting plan. */
export function sheetsHead(
  title: string,
  { plans }: CuttingPlan,
  { say }: Wording,
): Pick<Listing, 'title' | 'intro'> {
  const used = plans.filter(({ sheet }) => !sheet.offcut).reduce((sum, plan) => sum + plan.used, 0)
  return {
    title: say('sheets.title', { title }),
    intro: say('sheets.in-all', { sheets: used }),
  }
}

/** How many sheets of each size are used, and what cannot be cut; tables without rows are left out. */
export function sheetsOverview({ plans, short }: CuttingPlan, wording: Wording): Section[] {
  const { say, name } = wording
  return [
    {
      heading: say('sheets.sheets'),
      columns: [
        words(say('kit.stock')),
        measure(say('class.sheet')),
        count(say('class.sheets')),
        words(say('sheets.is-it-the-fewest')),
      ],
      rows: plans.map((plan) => [
        plan.sheet.offcut ? say('sheets.offcut-of', { stock: name(plan.stock) }) : name(plan.stock),
        wording.size(plan.sheet.size),
        String(plan.used),
        fewestWords(plan, wording),
      ]),
    },
    shortSection(short, wording),
  ].filter(({ rows }) => rows.length > 0)
}

/** Whether fewer sheets would do, as far as it is known. */
const fewestWords = ({ proven, used, lowerBound, sheet }: SheetPlan, { say }: Wording): string => {
  if (sheet.offcut) return say('sheets.lies-there')
  if (proven || used <= lowerBound) return say('sheets.yes-proven')
  return lowerBound > 0 ? say('sheets.perhaps-least', { least: lowerBound }) : say('sheets.perhaps')
}

function shortSection(short: CuttingPlan['short'], wording: Wording): Section {
  const { say, name } = wording
  return {
    heading: say('sheets.not-cut'),
    columns: [
      words(say('kit.piece')),
      count(say('kit.count')),
      words(say('kit.stock')),
      words(say('sheets.why')),
      words(say('sheets.what-would-help')),
    ],
    rows: short.map((one) => {
      const stock = name(one.stock)
      const { why, suggestion } = shortWords(one.reason, stock, wording)
      return [planPiece(one.piece, wording), String(one.count), stock, why, suggestion]
    }),
  }
}

/** `dark blue card, 12 × 12 in: cut 7 like this` */
export function layoutHeading(
  { stock, sheet, layouts }: SheetPlan,
  { times }: Layout,
  i: number,
  { say, name, size }: Wording,
): string {
  const values = { stock: name(stock), size: size(sheet.size), times }
  return layouts.length > 1
    ? say('sheets.lettered-layout', { ...values, letter: letterOf(i) })
    : say('sheets.layout', values)
}

export const letterOf = (i: number): string =>
  i < 26 ? String.fromCharCode(65 + i) : `${letterOf(Math.floor(i / 26) - 1)}${letterOf(i % 26)}`

function layoutSection(plan: SheetPlan, layout: Layout, i: number, wording: Wording): Section {
  const { say } = wording
  return {
    heading: layoutHeading(plan, layout, i, wording),
    columns: [
      count(say('sheets.cut')),
      words(say('sheets.first')),
      measure(say('sheets.set')),
      words(say('sheets.against')),
      words(say('sheets.then')),
    ],
    rows: cutRows(plan, layout, wording).map(({ number, first, set, against, after }) => [
      number,
      first,
      set,
      against,
      after,
    ]),
    note: say('sheets.gives', { pieces: piecesOf(layout, wording) }),
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
export function cutRows({ sheet }: Pick<SheetPlan, 'sheet'>, layout: Layout, wording: Wording): CutRow[] {
  const { say, length } = wording
  const steps = cutByCut(layout, sheet.size)
  const nameOf = shortNamesIn(layout, wording)
  return layout.cuts.map(({ set, against }, i) => {
    const { takes, turns, finished = [], aside = [] } = steps[i] ?? {}
    const labelled = groupBy(finished, nameOf)
    return {
      number: String(i + 1),
      first: firstWords(takes, turns === true, wording),
      set: length(set),
      against: say('sheets.edge', { edge: against }),
      after: [
        ...[...labelled].map(([piece, list]) =>
          list.length > 1
            ? say('sheets.label-several', { count: list.length, piece })
            : say('sheets.label', { piece }),
        ),
        ...(aside.length > 0
          ? [say('sheets.lay-aside', { count: aside.length, strips: wording.list(aside) })]
          : []),
      ].join(', '),
    }
  })
}

function firstWords(takes: string | undefined, turns: boolean, { say }: Wording): string {
  if (takes === undefined) return turns ? say('sheets.turn') : ''
  return turns ? say('sheets.take-and-turn', { strip: takes }) : say('sheets.take', { strip: takes })
}

/** `2 × base and 4 × side strip`, with the lesson where it matters. */
export const piecesOf = (layout: Layout, wording: Wording): string =>
  wording.list(
    [...groupBy(layout.placed, namesIn(layout, wording))].map(([name, list]) => `${list.length} × ${name}`),
  )

/** What a piece of a layout is called: with its lesson where there are several. */
function namesIn({ placed }: Pick<Layout, 'placed'>, wording: Wording): (piece: PlacedPiece) => string {
  const lessons = new Set(placed.map(({ lesson }) => lesson))
  return ({ piece, lesson }) => {
    const name = planPiece(piece, wording)
    return lessons.size > 1 ? wording.say('sheets.piece-of-lesson', { piece: name, lesson }) : name
  }
}

/** The same where only one of several lessons has a piece of that name on the sheet, without the lesson. */
function shortNamesIn({ placed }: Pick<Layout, 'placed'>, wording: Wording): (piece: PlacedPiece) => string {
  const full = namesIn({ placed }, wording)
  const lessonsOf = groupBy(placed, ({ piece }) => piece)
  return (piece) =>
    new Set(lessonsOf.get(piece.piece)?.map(({ lesson }) => lesson)).size > 1
      ? full(piece)
      : planPiece(piece.piece, wording)
}
