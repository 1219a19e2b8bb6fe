import type { Browser } from 'puppeteer-core'
import { handoutHtml } from './html.ts'
import type { Paper } from './page-css.ts'
import { printOnFewPages } from './pdf.ts'
import type { SizeChartView } from './size-chart-view.ts'
import type { Theme } from './theme.ts'

/** Types that are tried, in points: as large as fits on one page, and not too small to read on a wall. */
const types = [12, 11.5, 11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5] as const
/** What a page is set in before anybody has tried which type fits. */
const usualType = 8.5

const nameOf = (type: number): string => `type-${10 * type}`
const typeCss = [
  `:root{--chart-type:${usualType}pt}`,
  ...types.map((type) => `:root.${nameOf(type)}{--chart-type:${type}pt}`),
].join('\n')

/** The page of a chart, for a screen, and for print on paper that lies on its long side when there are many columns. */
export function sizeChartHtml(
  view: SizeChartView,
  { css, body }: Theme<SizeChartView>,
  paper: Paper,
): Promise<string> {
  const lying = view.tables.some(({ columns }) => columns.length > 4)
  return handoutHtml(view, { css: `${css}\n${typeCss}`, body }, { paper, lying })
}

/**
 * Prints the page of a chart on one sheet in the largest type that fits; on two, with the heads of its columns on each,
 * when no type does.
 *
 * @throws what `printPdf` throws.
 */
export const sizeChartPdf = (page: string, browser: Browser | Promise<Browser>): Promise<Uint8Array> =>
  printOnFewPages(page, types.map(nameOf), browser)
