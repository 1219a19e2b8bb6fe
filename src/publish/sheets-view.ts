import { toHtml } from 'hast-util-to-html'
import { drawCuttingPlan } from '../draw/cutting-plan/cutting-plan.ts'
import type { Wording } from '../wording/wording.ts'
import {
  cutRows,
  layoutHeading,
  piecesOf,
  sheetsHead,
  sheetsOverview,
} from '../workshop/class/sheets-listing.ts'
import type { CuttingPlan, Layout, SheetPlan } from '../workshop/cutting/cutting.ts'
import type { Html } from './html-text.ts'
import { measureHtml } from './measure-html.ts'

/** What the page of a cutting plan is made of. */
export interface SheetsView {
  readonly title: string
  readonly lang: string
  readonly foot: { readonly title: string; readonly print: string }
  readonly intro: string
  /** The tables above the drawings: how many sheets, and what cannot be cut. */
  readonly tables: readonly {
    readonly heading: string
    readonly heads: readonly string[]
    readonly rows: readonly (readonly Html[])[]
  }[]
  readonly layouts: readonly {
    readonly heading: Html
    readonly drawing: { readonly html: string }
    readonly gives: string
    readonly cuts: readonly {
      readonly number: string
      /** What is taken up, and whether it is turned. */
      readonly first: string
      readonly set: Html
      readonly against: string
      /** What gets a label, and what is laid aside. */
      readonly after: string
    }[]
  }[]
}

/** Room for the drawing of a sheet, in mm. */
const room = { maxWidth: 88, maxHeight: 66 }

/** What a page of sheets is about. */
export interface SheetsAbout {
  readonly title: string
  readonly wording: Wording
  readonly print: string
}

/** A cutting plan with a drawing of each layout. */
export function sheetsView(
  about: SheetsAbout,
  plan: CuttingPlan,
  upright: (stock: string, piece: string) => boolean,
): SheetsView {
  const { wording } = about
  const { title, intro } = sheetsHead(about.title, plan, wording)
  const layouts = plan.plans.flatMap((one, p) =>
    one.layouts.map((layout, i) => {
      const drawing = drawCuttingPlan(sheetPlanOf(one, layout, upright), wording, {
        ...room,
        key: `p${p}l${i}`,
      })
      return {
        heading: measureHtml(layoutHeading(one, layout, i, wording)),
        drawing: { html: toHtml(drawing.svg, { space: 'svg' }) },
        gives: piecesOf(layout, wording),
        cuts: cutRows(one, layout, wording).map(({ set, ...row }) => ({ ...row, set: measureHtml(set) })),
      }
    }),
  )
  return {
    title,
    lang: wording.lang,
    foot: { title, print: about.print },
    intro,
    tables: sheetsOverview(plan, wording).map(({ heading, columns, rows }) => ({
      heading,
      heads: columns.map(({ head }) => head),
      rows: rows.map((row) => row.map(measureHtml)),
    })),
    layouts,
  }
}

const sheetPlanOf = (
  { stock, sheet }: SheetPlan,
  { placed, cuts }: Layout,
  upright: (stock: string, piece: string) => boolean,
) => ({
  stock,
  sheet: sheet.size,
  placed: placed.map(({ piece, x, y, width, height }) => ({
    name: piece,
    x,
    y,
    width,
    height,
    upright: sheet.upright === true || upright(stock, piece),
  })),
  cuts,
})
