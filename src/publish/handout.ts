import type { Browser } from 'puppeteer-core'
import { type Finding, hasErrors } from '../length/finding.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import { readBrand } from './brand/read-brand.ts'
import { figuresOf } from './figures-of.ts'
import { handoutHtml } from './html.ts'
import { browserUnderWay } from './launch.ts'
import { disk, type Outside } from './outside.ts'
import type { Paper } from './page-css.ts'
import { withSetting } from './page-html.ts'
import { readPictures } from './pictures.ts'
import { type Laying, layingOf, printLaid, tooLong } from './print-made.ts'
import { BrowserError } from './problems.ts'
import { mustShowCautions } from './safety.ts'
import { codesFor } from './scan.ts'
import { loadTheme } from './theme.ts'
import { handoutView, shortPrintWords } from './view.ts'
import { type FileToWrite, mayWrite, writeWhole } from './write.ts'

/** What a handout is made with. */
export interface HandoutOptions {
  readonly paper: Paper
  /** Name of a theme, or the path of a folder. */
  readonly theme: string
  /** Where to write, without the ending: `out/harbour-lights` gives `.html` and `.pdf`. */
  readonly out: string
  /** Whether files that foldlore did not make may be overwritten. */
  readonly force: boolean
  /** Which of the two to write; both unless said. */
  readonly html?: boolean
  readonly pdf?: boolean
  /** The lesson's folder: pictures are taken from there. The current one unless said. */
  readonly folder?: string
  /** Whether to leave room for holes on the left. */
  readonly punched?: boolean
  /** A browser that runs, or will; without it one is started. It is not closed. */
  readonly browser?: Browser | Promise<Browser>
  /** Path of the browser to start. */
  readonly browserPath?: string
}

/** What came of it. */
export interface Published {
  /** The files written. None when there are errors. */
  readonly paths: readonly string[]
  /** Those of the lesson, and of its figures and pictures. */
  readonly findings: readonly Finding[]
}

/**
 * Makes the printed step sheet of a lesson: a page that stands alone, and a PDF.
 *
 * A lesson with errors is not printed: its numbers cannot be relied on.
 *
 * @throws ThemeError, NotOursError, OutsideError; then nothing has been written. BrowserError when the PDF cannot be
 * made; the page has been written then, if it was wanted.
 */
export async function publishHandout(
  lesson: FilledLesson,
  options: HandoutOptions,
  outside: Outside = disk,
): Promise<Published> {
  if (hasErrors(lesson.findings)) return { paths: [], findings: lesson.findings }
  const { out, html: wantsHtml = true, pdf: wantsPdf = true } = options
  const paths = { html: `${out}.html`, pdf: `${out}.pdf` }
  if (wantsHtml) await mayWrite(paths.html, options.force, outside)
  if (wantsPdf) await mayWrite(paths.pdf, options.force, outside)
  const own = wantsPdf && !options.browser ? await browserUnderWay(options.browserPath) : undefined
  try {
    const { page, findings } = await makeHandout(lesson, options, outside)
    if (!page) return { paths: [], findings }
    const asFile = (html: string): FileToWrite => ({
      path: paths.html,
      data: new TextEncoder().encode(html),
    })
    const print = wantsPdf
      ? await printMade(page, options.browser ?? own?.browser).catch(async (error: unknown) => {
          // The page is done, and any browser can print it: the work is not lost.
          if (wantsHtml && error instanceof BrowserError) await writeWhole([asFile(page.html)], outside)
          throw error
        })
      : undefined
    const files = [
      ...(wantsHtml ? [asFile(print?.html ?? page.html)] : []),
      ...(print ? [{ path: paths.pdf, data: print.pdf }] : []),
    ]
    await writeWhole(files, outside)
    return { paths: files.map(({ path }) => path), findings: [...findings, ...(print?.findings ?? [])] }
  } finally {
    await own?.stop()
  }
}

/** A handout that is made and not yet printed: plain data, so that another thread can make it. */
export interface MadeHandout {
  readonly html: string
  readonly laying: Laying
}

/**
 * Makes the page of a handout, without a browser.
 *
 * @returns no page when there are errors.
 * @throws ThemeError.
 */
export async function makeHandout(
  lesson: FilledLesson,
  options: Pick<HandoutOptions, 'paper' | 'theme' | 'folder' | 'punched'>,
  outside: Pick<Outside, 'read'>,
): Promise<{ page?: MadeHandout; findings: readonly Finding[] }> {
  if (hasErrors(lesson.findings)) return { findings: lesson.findings }
  const { paper, punched = false } = options
  const { folder = '.' } = options
  const [theme, { pictures, findings: ofPictures }, { brand, findings: ofBrand }, codes] = await Promise.all([
    loadTheme(options.theme),
    readPictures(lesson.tree, folder, outside),
    readBrand(lesson.frontMatter.brand, folder, outside),
    codesFor(lesson),
  ])
  const { view, findings: ofFigures } = handoutView(
    lesson,
    figuresOf(lesson),
    pictures,
    codes,
    theme.print.rooms,
  )
  const findings = [...lesson.findings, ...ofPictures, ...ofBrand, ...ofFigures]
  if (hasErrors(findings)) return { findings }
  const half = theme.print.pages === 'half'
  const foot =
    theme.print.foot === 'short' ? { ...view.foot, print: '', beside: shortPrintWords(lesson) } : view.foot
  const html = await handoutHtml({ ...view, foot, ...(brand && { brand }) }, theme, { paper, punched, half })
  mustShowCautions(view.safety, html, options.theme, view.cautions)
  return { page: { html, laying: layingOf(theme.print, paper) }, findings }
}

/** A handout that is printed. */
export interface PrintedHandout {
  readonly html: string
  readonly pdf: Uint8Array
  /** What did not fit. */
  readonly findings: readonly Finding[]
}

/**
 * Prints a handout that is made: its PDF, and its page in the setting that was taken for that.
 *
 * @throws BrowserError, OutsideError.
 */
export async function printMade(
  { html, laying }: MadeHandout,
  browser?: Browser | Promise<Browser>,
): Promise<PrintedHandout> {
  const print = await printLaid(html, laying, browser)
  const { pdf, setting } = print
  return { html: setting ? withSetting(html, setting) : html, pdf, findings: tooLong(laying, print) }
}
