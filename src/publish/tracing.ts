import type { Browser } from 'puppeteer-core'
import type { FilledLesson } from '../lesson/lesson.ts'
import type { PageBrand } from './brand/page-brand.ts'
import { handoutHtml } from './html.ts'
import type { Paper } from './page-css.ts'
import { printPdf } from './pdf.ts'
import { atRealSize } from './real-size.ts'
import { loadTracingTheme } from './theme.ts'
import { tracingView } from './tracing-view.ts'

/**
 * The templates of a lesson's pieces at their real size: one HTML page that stands alone.
 *
 * @param brand of which there is all but the logo: the room of these pages is measured out for their pieces.
 */
export async function tracingHtml(
  lesson: FilledLesson,
  paper: Paper,
  theme: string,
  { logo: _, ...brand }: PageBrand = {},
): Promise<string> {
  return handoutHtml({ ...tracingView(lesson, paper), brand }, await loadTracingTheme(theme), { paper })
}

/** The same as a PDF that asks the program that prints it not to scale it. */
export const tracingPdf = async (html: string, browser?: Browser | Promise<Browser>): Promise<Uint8Array> =>
  atRealSize(await printPdf(html, browser))
