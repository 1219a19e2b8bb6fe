import type { Unit } from '../length/length.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'
import type { ChartBlock, ChartColumn, SizeChart } from '../workshop/size-chart.ts'
import { reasons } from '../workshop/size-chart-listing.ts'
import { type ChartGroup, groupNote } from '../workshop/size-chart-rows.ts'
import { chartSigns } from '../workshop/size-chart-signs.ts'
import { type Html, html } from './html-text.ts'
import { measureText } from './measure.ts'
import { measureHtml } from './measure-html.ts'
import type { PageHead } from './page-html.ts'

interface CellView {
  readonly text: Html
  readonly unit: Unit
  /** Whether its column is the first of its unit. */
  readonly first: boolean
}

/** One table: all sizes of a card, or as many as go beside each other. */
export interface ChartTableView {
  readonly caption: Html
  readonly units: readonly { readonly name: string; readonly unit: Unit; readonly columns: number }[]
  readonly columns: readonly (CellView & { readonly works: boolean })[]
  readonly groups: readonly {
    readonly kind: string
    readonly name: string
    readonly note: Html
    readonly rows: readonly {
      /** Whether it is the first of its group, which has the name. */
      readonly head: boolean
      readonly what: string
      readonly cells: readonly CellView[]
    }[]
  }[]
}

/** Everything that the template of a size chart gets. */
export interface SizeChartView extends PageHead {
  readonly tables: readonly ChartTableView[]
  readonly notes: readonly Html[]
  /** Why sizes do not work. */
  readonly reasons: readonly Html[]
}

/** So many columns go beside each other on a page, in a type that can be read. */
const mostColumns = 10

/** The chart of a lesson's sizes, ready for a template. */
export function sizeChartView(chart: SizeChart, { frontMatter, cards }: FilledLesson): SizeChartView {
  const { title, wording, blocks, notes, prints } = chart
  const several = blocks.length > 1
  const grids = new Map(prints.map(({ unit, print }) => [unit, print.wording.grid(print.grid)]))
  const rulers = (units: readonly Unit[]): string =>
    wording.list(units.map((unit) => wording.say('chart.rulers', { unit, grid: grids.get(unit) ?? '' })))
  const sizes = cards.map(({ card }) => measureText(wording.size(card.closed)))
  return {
    title: wording.say('chart.title', { title }),
    lang: frontMatter.lang,
    foot: { title, print: wording.say('chart.print', { count: sizes.length, sizes: wording.list(sizes) }) },
    tables: blocks.flatMap((block) =>
      partsOf(block).map((columns) => tableView(block, columns, several, rulers, wording)),
    ),
    notes: notes.map(measureHtml),
    reasons: reasons(chart).map(reasonHtml),
  }
}

/** The columns of each table: all, or those of one unit, or as many of them as a page has room for. */
function partsOf({ columns }: ChartBlock): number[][] {
  const all = columns.map((_, i) => i)
  if (all.length <= mostColumns) return [all]
  const units = [...new Set(columns.map(({ unit }) => unit))]
  return units.flatMap((unit) => {
    const own = all.filter((i) => columns[i]?.unit === unit)
    const parts = Math.ceil(own.length / mostColumns)
    const each = Math.ceil(own.length / parts)
    return Array.from({ length: parts }, (_, part) => own.slice(part * each, (part + 1) * each))
  })
}

function tableView(
  { card, columns, groups }: ChartBlock,
  part: readonly number[],
  several: boolean,
  rulers: (units: readonly Unit[]) => string,
  wording: Wording,
): ChartTableView {
  const own = part.flatMap((i) => columns[i] ?? [])
  const cell = (text: string, column: ChartColumn, i: number): CellView => ({
    text: runsHtml(text, wording),
    unit: column.unit,
    first: i === 0 || own[i - 1]?.unit !== column.unit,
  })
  const units = [...new Set(own.map(({ unit }) => unit))]
  return {
    caption: measureHtml(
      several
        ? wording.say('chart.caption-of', { card, rulers: rulers(units) })
        : wording.say('chart.caption', { rulers: rulers(units) }),
    ),
    units: units.map((unit) => ({
      name: wording.say('chart.unit', { unit }),
      unit,
      columns: own.filter((column) => column.unit === unit).length,
    })),
    columns: own.map((column, i) => ({ ...cell(column.label, column, i), works: column.works })),
    groups: groups.map((group) => ({
      kind: group.kind,
      name: nameOf(group, wording),
      note: measureHtml(groupNote(group, wording)),
      rows: group.rows.map(({ what, cells }, row) => ({
        head: row === 0,
        what,
        cells: own.map((column, i) => cell(cells[part[i] ?? 0] || '–', column, i)),
      })),
    })),
  }
}

/** A sentence; what is to be written stands in it as code. */
const reasonHtml = (text: string): Html =>
  html(
    text
      .split('`')
      .map((part, i) => (i % 2 === 1 ? `<code>${measureHtml(part).html}</code>` : measureHtml(part).html))
      .join(''),
  )

/** Runs of marks, each on a line of its own; where a score starts and where it ends stay together. */
function runsHtml(text: string, wording: Wording): Html {
  const runs = text
    .split(chartSigns(wording).run)
    .map((run) => measureHtml(run.replace(/(?<=\d) (\p{L}+) (?=\d)/gu, '\u00a0$1\u00a0')).html)
  if (runs.length === 1) return html(runs.join(''))
  return html(runs.map((run) => `<span class="run">${run}</span>`).join(' '))
}

const nameOf = ({ names }: ChartGroup, wording: Wording): string => {
  const name = wording.list(names)
  return name.slice(0, 1).toUpperCase() + name.slice(1)
}
