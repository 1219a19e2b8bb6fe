import type { Browser, HTTPRequest, Page } from 'puppeteer'
import { startBrowser, timeLimit } from './launch.ts'
import { markOurs, pageCount, placeOfEnd } from './pdf-text.ts'
import { OutsideError } from './problems.ts'

/** A printed page. */
export interface Print {
  readonly pdf: Uint8Array
  readonly pages: number
  /** The other setting that was taken, if its pages fall better. */
  readonly setting?: Setting
}

/**
 * Settings that a theme offers besides its usual one, as classes of the root: `tight` takes a little less room, `apart`
 * starts the last stage on a page of its own.
 */
export type Setting = 'tight' | 'apart'

/** A last page that is filled less than this looks like a mistake, and costs a sheet for every reader. */
const leastFill = 0.35

/**
 * Prints a page that stands alone as a tagged PDF, with title, language, outline and page numbers from the page itself.
 *
 * Scripts do not run in it, and nothing is fetched.
 *
 * @param html the whole page; its `@page` says the size of the paper.
 * @param browser one that runs, or will; without it one is started and closed again.
 * @throws NoBrowserError, or OutsideError when the browser cannot print the page or takes too long.
 */
export const printPdf = (html: string, browser?: Browser | Promise<Browser>): Promise<Uint8Array> =>
  inPage(html, browser, async (page) => markOurs(await pdfOf(page)))

/**
 * The same for a handout. When little is left over for its last page, it is tried whether another setting of the theme
 * does without that page, or at least puts a whole stage on it.
 */
export const printHandout = (html: string, browser?: Browser | Promise<Browser>): Promise<Print> =>
  inPage(html, browser, bestPrint)

async function inPage<T>(
  html: string,
  browser: Browser | Promise<Browser> | undefined,
  print: (page: Page) => Promise<T>,
): Promise<T> {
  if (!browser) {
    const own = await startBrowser()
    try {
      return await inPage(html, own, print)
    } finally {
      await own.close()
    }
  }
  const running = await browser
  try {
    const page = await running.newPage()
    try {
      await Promise.all([page.setJavaScriptEnabled(false), page.setRequestInterception(true)])
      page.on('request', refuse)
      await page.setContent(html, { waitUntil: 'load', timeout: timeLimit })
      return await print(page)
    } finally {
      await page.close()
    }
  } catch (error) {
    throw new OutsideError(
      `The browser could not print the page: ${error instanceof Error ? error.message : error}`,
      'Try again, or name another browser in FOLDLORE_BROWSER',
    )
  }
}

async function bestPrint(page: Page): Promise<Print> {
  const usual = await measured(page)
  if (usual.pages === 1 || usual.fill >= leastFill) return { pdf: markOurs(usual.pdf), pages: usual.pages }
  const tight = await measured(page, 'tight')
  if (tight.pages < usual.pages) return { pdf: markOurs(tight.pdf), pages: tight.pages, setting: 'tight' }
  const apart = await measured(page, 'apart')
  if (apart.pages === usual.pages && apart.fill > usual.fill)
    return { pdf: markOurs(apart.pdf), pages: apart.pages, setting: 'apart' }
  return { pdf: markOurs(usual.pdf), pages: usual.pages }
}

async function measured(
  page: Page,
  setting?: Setting,
): Promise<{ pdf: Uint8Array; pages: number; fill: number }> {
  if (setting) await page.evaluate(`document.documentElement.className = '${setting}'`)
  const pdf = await pdfOf(page)
  return { pdf, pages: pageCount(pdf), fill: placeOfEnd(pdf)?.fill ?? 1 }
}

const pdfOf = (page: Page): Promise<Uint8Array> =>
  page.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    tagged: true,
    outline: true,
    timeout: timeLimit,
  })

/** Data is in the page already; whatever else it asks for, it does not get. */
const refuse = (request: HTTPRequest): void => {
  const allowed = /^(data|about):/.test(request.url())
  // Aborted, and not blocked: a page that wants to go elsewhere then stays where it is.
  void (allowed ? request.continue() : request.abort('aborted')).catch(() => {})
}
