import type { FilledLesson } from '../lesson/lesson.ts'
import { sizeChartHtml, sizeChartPdf } from '../publish/size-chart.ts'
import { sizeChartView } from '../publish/size-chart-view.ts'
import { loadSizeChartTheme } from '../publish/theme.ts'
import type { SizeChart } from '../workshop/size-chart.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { brandFor } from './print-brand.ts'
import { type Printing, printPages } from './print-pages.ts'

/** Prints a chart of sizes as a page and a PDF. Throws what `printPages` throws. */
export async function printSizeChart(
  chart: SizeChart,
  lesson: FilledLesson,
  path: string,
  options: Options,
  outside: Outside,
): Promise<void> {
  const brand = await brandFor(path, lesson, options, outside)
  const view = { ...sizeChartView(chart, lesson), ...brand }
  const printing: Printing = {
    html: async (theme, paper) => sizeChartHtml(view, await loadSizeChartTheme(theme), paper),
    pdf: (html, paper, browser) => sizeChartPdf(view, html, paper, browser),
  }
  await printPages({ path, what: 'sizes' }, printing, options, outside)
}
