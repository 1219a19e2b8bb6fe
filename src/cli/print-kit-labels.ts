import type { Browser } from 'puppeteer-core'
import { labelsHtml } from '../publish/kit-labels.ts'
import type { Paper } from '../publish/page-css.ts'
import { printPdf } from '../publish/pdf.ts'
import { OutsideError } from '../publish/problems.ts'
import { atRealSize } from '../publish/real-size.ts'
import type { Wording } from '../wording/wording.ts'
import type { LabelSheet } from '../workshop/class/class-file.ts'
import type { KitLabel } from '../workshop/class/kit-labels.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { brandFor } from './print-brand.ts'
import { type Printing, printPages } from './print-pages.ts'

/**
 * Prints the labels of a class on their sheets, at their real size.
 *
 * @returns the paths of what was written.
 * @throws OutsideError when they do not go on the sheet, and what `printPages` throws.
 */
export async function printKitLabels(
  about: { readonly path: string; readonly title: string; readonly wording: Wording },
  labels: readonly KitLabel[],
  sheet: LabelSheet,
  options: Options,
  outside: Outside,
  browser?: Promise<Browser>,
): Promise<string[]> {
  const { brand } = await brandFor(about.path, undefined, options, outside)
  const html = async (theme: string, paper: Paper): Promise<string> => {
    const page = await labelsHtml(about, labels, sheet, paper, theme, brand)
    if (page !== 'no room' && page !== 'too small') return page
    throw new OutsideError(
      page === 'no room'
        ? 'The labels of this sheet are too small to write on'
        : 'What is in a kit does not fit on its label',
      'Write fewer rows and columns, such as `labels: {columns: 2, rows: 4}`',
    )
  }
  const pdf: Printing['pdf'] = async (page, _, running) => atRealSize(await printPdf(page, running))
  return printPages({ path: about.path, what: 'labels' }, { html, pdf }, options, outside, browser)
}
