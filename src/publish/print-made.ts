import type { Browser } from 'puppeteer-core'
import type { Finding } from '../length/finding.ts'
import type { Sheeting } from './impose/sheet-order.ts'
import { onePageSettings, smallestType } from './one-page.ts'
import { halfSize, type Paper, paperSize } from './page-css.ts'
import { type Print, printHandout, printOnFewPages } from './pdf.ts'
import type { ThemePrint } from './theme-print.ts'

/** How a page that is made is printed: plain data. */
export interface Laying {
  readonly sheets: Sheeting
  /** Width of the text in mm, where all is set as small as it must be for one page. */
  readonly onePage?: number
}

/** Margins on both sides together, in mm, as the style sheets have them; a theme with narrower ones only leaves some room. */
const margins = { whole: 28, half: 22 } as const

/** How a theme has its handouts printed on a paper. */
export const layingOf = ({ sheets, fit, pages }: ThemePrint, paper: Paper): Laying => ({
  sheets,
  ...(fit === 'one page' && {
    onePage: (pages === 'half' ? halfSize(paper) : paperSize(paper)).width - margins[pages],
  }),
})

/**
 * Prints the page of a handout as its theme wants it: its pages in the setting in which they fall best, and put on sheets.
 *
 * @returns the number of pages is that of the lesson, not of the sheets.
 * @throws what `printPdf` throws.
 */
export async function printLaid(
  html: string,
  { sheets, onePage }: Laying,
  browser?: Browser | Promise<Browser>,
): Promise<Print> {
  const print =
    onePage === undefined
      ? await printHandout(html, browser)
      : await printOnFewPages(html, onePageSettings, onePage, browser)
  if (sheets === 'single') return print
  const { imposePdf } = await import('./impose/impose.ts')
  return { ...print, pdf: await imposePdf(print.pdf, sheets) }
}

/** A lesson that should be on one page, and is not in the smallest type either. */
export const tooLong = ({ onePage }: Laying, { pages }: Print): Finding[] =>
  onePage === undefined || pages <= 1
    ? []
    : [
        {
          rule: 'too-long-for-one-page',
          severity: 'warning',
          message: `The lesson goes on to page ${pages}: even in ${smallestType} pt it does not fit on one, as this theme wants it`,
          suggestion:
            'Shorten its cautions or its list of supplies, make two lessons of it, or print it with `--theme booklet`',
        },
      ]
