import { point } from '../draw/ink.ts'
import { textWidth, wrap } from '../draw/label.ts'
import { toMm } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import type { LabelSheet } from '../workshop/class/class-file.ts'
import type { KitLabel } from '../workshop/class/kit-labels.ts'
import type { PageBrand } from './brand/page-brand.ts'
import { handoutHtml } from './html.ts'
import type { Html } from './html-text.ts'
import { measureHtml } from './measure-html.ts'
import { type Paper, paperSize } from './page-css.ts'
import { loadLabelsTheme } from './theme.ts'

/** What the page of labels is made of; all lengths in mm. */
export interface LabelsView {
  readonly title: string
  readonly lang: string
  readonly foot: { readonly title: string; readonly print: string }
  readonly brand?: PageBrand
  readonly width: number
  readonly height: number
  readonly pages: readonly {
    readonly labels: readonly {
      readonly left: number
      readonly top: number
      readonly width: number
      readonly height: number
      readonly name: string
      readonly title: string
      readonly chosen: string
      readonly contents: Html
      /** Text size in points at which everything fits. */
      readonly points: number
    }[]
  }[]
}

/** Text sizes that are tried, in points: smaller than the last, nobody reads a label while packing. */
const sizes = [12, 11, 10, 9, 8, 7, 6] as const
/** Clear room on every side of a label, in mm. */
const inset = 3

/** Why labels cannot be printed as they are. */
export type LabelsProblem = 'no room' | 'too small'

/** The labels of a class on their sheets: one HTML page that stands alone; or why they do not go on them. */
export async function labelsHtml(
  { title, wording }: { readonly title: string; readonly wording: Wording },
  labels: readonly KitLabel[],
  sheet: LabelSheet,
  paper: Paper,
  theme: string,
  brand?: PageBrand,
): Promise<string | LabelsProblem> {
  const { width, height } = paperSize(paper)
  const [left, top, across, down] = [sheet.left, sheet.top, sheet.across, sheet.down].map(toMm) as [
    number,
    number,
    number,
    number,
  ]
  const own = {
    width: (width - 2 * left - (sheet.columns - 1) * across) / sheet.columns,
    height: (height - 2 * top - (sheet.rows - 1) * down) / sheet.rows,
  }
  if (own.width < 20 || own.height < 10) return 'no room'
  const sized = labels.map((label) => ({ label, points: sizes.find((points) => fits(label, own, points)) }))
  if (sized.some(({ points }) => points === undefined)) return 'too small'
  const perPage = sheet.columns * sheet.rows
  const placed = sized.map(({ label, points = sizes[0] }, i) => ({
    left: left + (i % sheet.columns) * (own.width + across),
    top: top + (Math.floor(i / sheet.columns) % sheet.rows) * (own.height + down),
    ...own,
    name: label.name,
    title: label.title,
    chosen: label.chosen.join(', '),
    // A line may end behind a dot, and not before it.
    contents: measureHtml(label.contents.join('\u00a0· ')),
    points,
  }))
  const view: LabelsView = {
    title: wording.say('class.labels-title', { title }),
    lang: wording.lang,
    foot: { title: '', print: '' },
    ...(brand && { brand: coloursOf(brand) }),
    width,
    height,
    pages: Array.from({ length: Math.ceil(placed.length / perPage) }, (_, page) => ({
      labels: placed.slice(page * perPage, (page + 1) * perPage),
    })),
  }
  return handoutHtml(view, await loadLabelsTheme(theme), { paper })
}

/** A label has room for the colours of a brand alone, and none for its logo. */
const coloursOf = ({ accent, second }: PageBrand): PageBrand => ({
  ...(accent && { accent }),
  ...(second && { second }),
})

/** Lines are this many text sizes apart; the name is larger than the rest by as much as the style sheet says. */
const [leading, nameSize] = [1.25, 1.5]

/** Whether everything on a label fits at a text size. */
function fits(
  { name, title, chosen, contents }: KitLabel,
  { width, height }: { width: number; height: number },
  points: number,
): boolean {
  const size = points * point
  const room = width - 2 * inset
  if (textWidth(name, size * nameSize) > room) return false
  const lines = [title, ...(chosen.length > 0 ? [chosen.join(', ')] : []), contents.join(' · ')].flatMap(
    (text) =>
      // A browser breaks lines a little differently.
      wrap(text, room * 0.96, size),
  )
  return lines.length * size * leading + size * nameSize * leading + 2 <= height - 2 * inset
}
