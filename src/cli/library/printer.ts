import type { Browser } from 'puppeteer-core'
import { type MadeHandout, type PrintedHandout, printMade } from '../../publish/handout.ts'
import { startBrowser, stopBrowser } from '../../publish/launch.ts'
import { NoBrowserError, OutsideError } from '../../publish/problems.ts'
import { makeTurns } from './turns.ts'

/** One browser that prints several pages beside each other. */
export interface Printer {
  /**
   * Prints a handout. What goes wrong with a browser, such as that it ends or that it stands still, is tried once more
   * in a browser of its own, so that one bad print spoils no other.
   *
   * @throws NoBrowserError, or OutsideError when the second time fails too.
   */
  readonly print: (made: MadeHandout) => Promise<PrintedHandout>
  /** Ends the browser at once. */
  readonly close: () => Promise<void>
}

/** How a printer works. */
export interface Printing {
  /** How many pages beside each other. */
  readonly pages: number
  /** How long one print may take, in ms. */
  readonly limit?: number
  readonly browserPath?: string
  readonly start?: typeof startBrowser
}

/** Starts a browser when the first print comes. */
export function makePrinter({
  pages,
  limit = 60_000,
  browserPath,
  start = (path) => startBrowser(path, { isWatched: true }),
}: Printing): Printer {
  const running = new Set<Promise<Browser>>()
  const turns = makeTurns(pages)
  let shared: Promise<Browser> | undefined
  let closed = false
  let missing: NoBrowserError | undefined
  const open = (): Promise<Browser> => {
    const browser = start(browserPath)
    browser.catch(() => {})
    running.add(browser)
    return browser
  }
  const end = async (browser: Promise<Browser>): Promise<void> => {
    running.delete(browser)
    if (shared === browser) shared = undefined
    await browser.then(stopBrowser).catch(() => {})
  }
  const again = async (made: MadeHandout): Promise<PrintedHandout> => {
    const own = open()
    try {
      return await within(limit, printMade(made, own))
    } finally {
      await end(own)
    }
  }
  return {
    async print(made) {
      await turns.take()
      try {
        if (closed) throw new OutsideError('The browser has been ended')
        if (missing) throw missing
        shared ??= open()
        const browser = shared
        try {
          return await within(limit, printMade(made, browser))
        } catch (error) {
          await end(browser)
          // One that does not start is not tried for every print.
          if (error instanceof NoBrowserError) missing = error
          if (closed || missing) throw error
          return await again(made)
        }
      } finally {
        turns.give()
      }
    },
    async close() {
      closed = true
      await Promise.all([...running].map(end))
    },
  }
}

/** A browser that stands still answers nothing, not even that. */
function within<T>(limit: number, work: Promise<T>): Promise<T> {
  return new Promise((done, fail) => {
    const timer = setTimeout(
      () =>
        fail(
          new OutsideError(
            `The browser did not print the page within ${Math.round(limit / 1000)} s`,
            'Try again, or name another browser in FOLDLORE_BROWSER',
          ),
        ),
      limit,
    )
    work.then(done, fail).finally(() => clearTimeout(timer))
  })
}
