import type { FilledLesson } from '../lesson/lesson.ts'
import { startBrowser, stopBrowser } from '../publish/launch.ts'
import { sizeChartHtml, sizeChartPdf } from '../publish/size-chart.ts'
import { sizeChartView } from '../publish/size-chart-view.ts'
import { loadSizeChartTheme } from '../publish/theme.ts'
import { mayWrite, writeWhole } from '../publish/write.ts'
import type { SizeChart } from '../workshop/size-chart.ts'
import { tellWritten } from './answer.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { pagesFor } from './pages.ts'
import { printSettings } from './print-settings.ts'

/**
 * Prints a chart of sizes as a page and a PDF. The page is written first, so it is there when no browser is found.
 *
 * @throws what publishing a handout throws.
 */
export async function printSizeChart(
  chart: SizeChart,
  lesson: FilledLesson,
  path: string,
  options: Options,
  outside: Outside,
): Promise<void> {
  const { out, html: wantsHtml, pdf: wantsPdf } = await pagesFor(path, 'sizes', options, outside)
  const { paper, theme: name, force, browserPath } = printSettings(options, outside)
  const [page, pdf] = [`${out}.html`, `${out}.pdf`]
  if (wantsHtml) await mayWrite(page, force, outside)
  if (wantsPdf) await mayWrite(pdf, force, outside)
  const view = sizeChartView(chart, lesson)
  const html = await sizeChartHtml(view, await loadSizeChartTheme(name), paper)
  const write = async (path: string, data: Uint8Array): Promise<void> => {
    await writeWhole([{ path, data }], outside)
    tellWritten([path], options, outside)
  }
  if (wantsHtml) await write(page, new TextEncoder().encode(html))
  if (!wantsPdf) return
  const browser = await startBrowser(browserPath)
  try {
    await write(pdf, await sizeChartPdf(view, html, paper, browser))
  } finally {
    await stopBrowser(browser)
  }
}
