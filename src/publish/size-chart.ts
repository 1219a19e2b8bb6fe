import type { Browser } from 'puppeteer-core'
import { handoutHtml } from './html.ts'
import { type Paper, paperSize } from './page-css.ts'
import type { PageHead } from './page-html.ts'
import { printOnFewPages } from './pdf.ts'
import { chartSettings, chartTypes } from './size-chart-css.ts'
import type { SizeChartView } from './size-chart-view.ts'
import type { Theme } from './theme.ts'

/** The page of a chart, for a screen, and for print on paper that lies on its long side when there are many columns. */
export function sizeChartHtml(
  view: SizeChartView & Pick<PageHead, 'brand'>,
  { css, body }: Theme<SizeChartView>,
  paper: Paper,
): Promise<string> {
  return handoutHtml(view, { css: `${css}\n${chartTypes}`, body }, { paper, lying: lies(view) })
}

const lies = ({ tables }: SizeChartView): boolean => tables.some(({ columns }) => columns.length > 4)

/** Margins on both sides, in mm, as the style sheet has them; a theme with narrower ones only leaves some room. */
const margins = 28

/**
 * Prints the page of a chart on one sheet in the largest type that fits; on two, with the heads of its columns on each,
 * when no type does.
 *
 * @param page made of `view` and for `paper`.
 * @throws what `printPdf` throws.
 */
export async function sizeChartPdf(
  view: SizeChartView,
  page: string,
  paper: Paper,
  browser: Browser | Promise<Browser>,
): Promise<Uint8Array> {
  const { width, height } = paperSize(paper)
  const across = (lies(view) ? height : width) - margins
  return (await printOnFewPages(page, chartSettings, across, browser)).pdf
}
