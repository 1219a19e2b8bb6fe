import { turnedTo } from '../../card/shape.ts'
import { hasErrors } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import { mainCard } from '../../lesson/figure-target.ts'
import type { OtherSize } from '../../lesson/lesson.ts'
import { sameSize, unitsOf } from '../../lesson/sizes/offered.ts'
import { chartTypes } from '../../publish/size-chart-css.ts'
import { type SizeChartView, sizeChartView } from '../../publish/size-chart-view.ts'
import { sizeChart } from '../../workshop/size-chart.ts'
import { brandBeside } from './brand.ts'
import type { Beside, PageOf, Settings } from './engine.ts'
import { lessonAt, readClosed } from './kept-lesson.ts'
import { pageOf } from './page-of.ts'

/** The chart of sizes as a theme has it. */
export interface ChartTheme {
  readonly css: string
  readonly body: (view: SizeChartView) => string
}

/** The chart as a page, and what its columns stand for. */
export interface SizesAnswer extends PageOf {
  /** In the order of the heads of its columns. */
  readonly columns: readonly SizeColumn[]
}

/** A print that may be chosen. */
export interface SizeColumn {
  /** As it is named: `6 × 6 in`. */
  readonly label: string
  /** What `Settings.closed` says for it; missing for the lesson's own size. */
  readonly closed?: string
  readonly units: Unit
  /** Whether the card works in it. */
  readonly works: boolean
  /** Whether it is the print of these settings. */
  readonly chosen: boolean
}

/**
 * The chart of a lesson's sizes in both units, and of the size that is wished.
 *
 * @returns undefined when the lesson has errors in its own size: then there is nothing that could be charted.
 */
export async function sizesOf(
  text: string,
  settings: Settings,
  beside: Beside,
  theme: ChartTheme,
): Promise<SizesAnswer | undefined> {
  const { lesson, filled: own } = lessonAt(text, {})
  const main = mainCard(own.cards.map(({ card }) => card))
  if (!main || hasErrors(own.findings)) return undefined
  const wished = readClosed(settings.closed)
  const closed = typeof wished === 'string' ? turnedTo(main.closed, wished) : wished
  const size = closed && !('refused' in closed) ? closed : main.closed
  const added: OtherSize[] = sameSize(size, main.closed)
    ? []
    : [{ text: settings.closed ?? '', size, place: { line: 1, column: 1 } }]
  const chart = sizeChart(lesson, own, unitsOf(own.frontMatter), added)
  const view = sizeChartView(chart, own)
  const unit = settings.units ?? own.unit
  const others = new Map(chart.prints.map(({ label, other }) => [label, other]))
  const { brand } = await brandBeside(own.frontMatter.brand, beside)
  const css = `${theme.css}\n${chartTypes}`
  return {
    ...pageOf(view, brand, { css, body: theme.body(view) }, settings),
    columns: chart.blocks
      .flatMap(({ columns }) => columns)
      .map(({ label, unit: units, works }) => {
        const other = others.get(label)
        const chosen = units === unit && sameSize(other?.size ?? main.closed, size)
        return { label, units, works, chosen, ...(other && { closed: other.text }) }
      }),
  }
}
