import type { Browser, HTTPRequest, Page } from 'puppeteer-core'
import { isLate, openPage, startBrowser, starterOf, stopBrowser, timeLimit } from './launch.ts'
import { layoutOf } from './layout.ts'
import { trial } from './page-ends.ts'
import { markOurs } from './pdf-mark.ts'
import { PrintError } from './problems.ts'
import { bestLayout, type Layout } from './setting.ts'

/** A printed page. */
export interface Print {
  readonly pdf: Uint8Array
  readonly pages: number
  /** Class of the root in the other setting that was taken, if its pages fall better. */
  readonly setting?: string
}

/**
 * Prints a page that stands alone as a tagged PDF, with title, language, outline and page numbers from the page itself.
 *
 * Scripts do not run in it, and nothing is fetched.
 *
 * @param html the whole page; its `@page` says the size of the paper.
 * @param browser one that runs, or will; without it one is started and closed again.
 * @throws NoBrowserError, or PrintError when the browser, and another one after it, cannot print the page or takes too long.
 */
export const printPdf = (html: string, browser?: Browser | Promise<Browser>): Promise<Uint8Array> =>
  inPage(html, browser, async (page) => markOurs(await pdfOf(page)))

/**
 * The same for a handout. When its last page would hold next to nothing, or another page would end early because what
 * follows does not fit, the theme's other settings are tried, and the one whose pages fall best is taken.
 */
export const printHandout = (html: string, browser?: Browser | Promise<Browser>): Promise<Print> =>
  inPage(html, browser, bestPrint)

/**
 * Prints a page on as few sheets as its settings allow, up to two, in the first of them that allows it; if none does, in
 * the last, and with it on as many as it takes.
 *
 * @param settings classes of the root; each of them must take no more room than the one before it.
 * @param width of the text on the paper, in mm: a setting in which a table is wider is none.
 */
export const printOnFewPages = (
  html: string,
  settings: readonly string[],
  width: number,
  browser?: Browser | Promise<Browser>,
): Promise<Print> =>
  inPage(html, browser, async (page) => {
    await page.emulateMediaType('print')
    await page.setViewport({ width: Math.floor((width * 96) / 25.4), height: 800 })
    const found = (await firstWithin(page, settings, 1)) ?? (await firstWithin(page, settings, 2))
    const setting = found ?? settings.at(-1) ?? ''
    await setClass(page, setting)
    const pdf = markOurs(await pdfOf(page))
    return { pdf, pages: layoutOf(pdf).pages, setting }
  })

/** The first setting whose text takes so many pages at most. */
async function firstWithin(
  page: Page,
  settings: readonly string[],
  most: number,
): Promise<string | undefined> {
  let [low, high] = [0, settings.length]
  while (low < high) {
    const middle = (low + high) >> 1
    const { pages } = await layoutIn(page, settings[middle])
    // What is too wide the browser would shrink, margins and all, or cut off.
    const tooWide = await page.evaluate('document.documentElement.scrollWidth > innerWidth')
    if (pages > most || tooWide) low = middle + 1
    else high = middle
  }
  return settings[low]
}

/** Prints in a browser, and when that fails, once more in another one, where we know how to start it. */
async function inPage<T>(
  html: string,
  browser: Browser | Promise<Browser> | undefined,
  print: (page: Page) => Promise<T>,
): Promise<T> {
  const running = await (browser ?? startBrowser())
  const start = starterOf(running)
  try {
    return await inBrowser(html, running, print)
  } catch (error) {
    if (!start) throw printError(error)
    // Whatever is the matter with it, it prints nothing more.
    await stopBrowser(running)
  } finally {
    if (!browser) await stopBrowser(running)
  }
  const another = await start()
  try {
    return await inBrowser(html, another, print)
  } catch (error) {
    throw printError(error)
  } finally {
    await stopBrowser(another)
  }
}

async function inBrowser<T>(html: string, browser: Browser, print: (page: Page) => Promise<T>): Promise<T> {
  const page = await openPage(browser)
  try {
    await Promise.all([page.setJavaScriptEnabled(false), page.setRequestInterception(true)])
    page.on('request', refuse)
    await page.setContent(html, { waitUntil: 'load', timeout: timeLimit })
    return await print(page)
  } finally {
    // Of a browser that lives on. It is not waited for: this one may have gone, or stand still.
    void page.close().catch(() => {})
  }
}

/** What happened to a browser, in plain words. */
function printError(error: unknown): PrintError {
  const said = error instanceof Error ? error.message : String(error)
  const what = isLate(error)
    ? `did not answer within ${timeLimit / 1000} s`
    : /\b(closed|detached|crashed)\b/i.test(said)
      ? 'ended while it printed the page'
      : `could not print the page: ${said}`
  return new PrintError(`The browser ${what}`, 'Try again, or name another browser in FOLDLORE_BROWSER')
}

async function bestPrint(page: Page): Promise<Print> {
  let tight: Uint8Array | undefined
  const { layout, setting } = await bestLayout(async (setting) => {
    if (setting !== 'tight') return layoutIn(page, setting)
    // Most handouts for which it is tried are printed in it, so it is printed at once.
    tight = await printedIn(page, setting)
    return layoutOf(tight)
  })
  const pdf = setting === 'tight' && tight ? tight : await printedIn(page, setting)
  return { pdf: markOurs(pdf), pages: layout.pages, ...(setting && { setting }) }
}

async function printedIn(page: Page, setting = ''): Promise<Uint8Array> {
  await setClass(page, setting)
  return pdfOf(page)
}

/** Where things fall in a setting. Nothing is drawn for that, which takes a third of the time. */
async function layoutIn(page: Page, setting?: string): Promise<Layout> {
  await setClass(page, `${trial} ${setting ?? ''}`)
  return layoutOf(await page.pdf({ ...sizes, tagged: false, outline: false }))
}

const setClass = (page: Page, name: string): Promise<unknown> =>
  page.evaluate(`document.documentElement.className = '${name}'`)

const sizes = { preferCSSPageSize: true, printBackground: true, timeout: timeLimit } as const
const pdfOf = (page: Page): Promise<Uint8Array> => page.pdf({ ...sizes, tagged: true, outline: true })

/** Data is in the page already; whatever else it asks for, it does not get. */
const refuse = (request: HTTPRequest): void => {
  const allowed = /^(data|about):/.test(request.url())
  // Aborted, and not blocked: a page that wants to go elsewhere then stays where it is.
  void (allowed ? request.continue() : request.abort('aborted')).catch(() => {})
}
