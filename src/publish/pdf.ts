import type { Browser, HTTPRequest, Page } from 'puppeteer'
import { startBrowser, timeLimit } from './launch.ts'
import { OutsideError } from './problems.ts'

/**
 * Prints a page that stands alone as a tagged PDF, with title, language, outline and page numbers from the page itself.
 *
 * Scripts do not run in it, and nothing is fetched.
 *
 * @param html the whole page; its `@page` says the size of the paper.
 * @param browser one that runs, or will; without it one is started and closed again.
 * @throws NoBrowserError, or OutsideError when the browser cannot print the page or takes too long.
 */
export async function printPdf(html: string, browser?: Browser | Promise<Browser>): Promise<Uint8Array> {
  if (!browser) {
    const own = await startBrowser()
    try {
      return await printPdf(html, own)
    } finally {
      await own.close()
    }
  }
  const running = await browser
  try {
    const page = await running.newPage()
    try {
      return markOurs(await printPage(page, html))
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

async function printPage(page: Page, html: string): Promise<Uint8Array> {
  await Promise.all([page.setJavaScriptEnabled(false), page.setRequestInterception(true)])
  page.on('request', refuse)
  await page.setContent(html, { waitUntil: 'load', timeout: timeLimit })
  return page.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    tagged: true,
    outline: true,
    timeout: timeLimit,
  })
}

/** Data is in the page already; whatever else it asks for, it does not get. */
const refuse = (request: HTTPRequest): void => {
  const allowed = /^(data|about):/.test(request.url())
  void (allowed ? request.continue() : request.abort('blockedbyclient')).catch(() => {})
}

/**
 * Puts our name into the document information, where the browser has put its own: a later print may then take the
 * file's place. The new text is as long as the old, so that every offset in the file stays true.
 */
export function markOurs(pdf: Uint8Array): Uint8Array {
  const bytes = Buffer.from(pdf)
  const text = bytes.toString('latin1')
  const found = /\/Creator \((?:[^\\()]|\\.|\([^()]*\))*\)/.exec(text)
  if (found) {
    const ours = '/Creator (foldlore)'
    if (found[0].length >= ours.length) bytes.write(ours.padEnd(found[0].length), found.index, 'latin1')
  }
  return new Uint8Array(bytes)
}
