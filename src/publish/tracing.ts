import type { Browser } from 'puppeteer-core'
import type { FilledLesson } from '../lesson/lesson.ts'
import { handoutHtml } from './html.ts'
import type { Paper } from './page-css.ts'
import { printPdf } from './pdf.ts'
import { atRealSize } from './real-size.ts'
import { loadTracingTheme } from './theme.ts'
import { tracingView } from './tracing-view.ts'

/** The templates of a lesson's pieces at their real size: one HTML page that stands alone. */
export async function tracingHtml(lesson: FilledLesson, paper: Paper, theme: string): Promise<string> {
  return handoutHtml(tracingView(lesson, paper), await loadTracingTheme(theme), { paper })
}

/** The same as a PDF that asks the program that prints it not to scale it. */
export const tracingPdf = async (html: string, browser?: Browser | Promise<Browser>): Promise<Uint8Array> =>
  atRealSize(await printPdf(html, browser))
