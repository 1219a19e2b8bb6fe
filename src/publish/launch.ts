import { subscribe, unsubscribe } from 'node:diagnostics_channel'
import { once } from 'node:events'
import process from 'node:process'
import type { Browser, Page } from 'puppeteer-core'
import { findBrowser } from './browser.ts'
import { NoBrowserError } from './problems.ts'

/** How long a browser may take to start, and to do any one thing, in ms. */
export const timeLimit = 30_000

/**
 * Names lead nowhere, whatever a page asks for; a page is drawn the same with and without a screen. What the browser would
 * keep ready for a second page and for the network, each in a program of its own, it does not start.
 */
const switches = [
  '--host-resolver-rules=MAP * ~NOTFOUND',
  '--font-render-hinting=none',
  '--disable-gpu',
  '--disable-features=SpareRendererForSitePerProcess',
  '--enable-features=NetworkServiceInProcess2',
]

/** How a browser is started. */
export interface Starting {
  /**
   * Whether whoever starts it sees to it: Ctrl-C then does not end the program, browser and all, and a page that it
   * could not print is not printed in another one.
   */
  readonly isWatched?: boolean
  /** Ends it while it starts. */
  readonly signal?: AbortSignal
}

/**
 * Starts a browser without a window, that reaches no network. Close it when done. One that ends at once is
 * tried once more.
 *
 * @param asked path of a browser; else one is found.
 * @throws NoBrowserError when there is none, or it does not start.
 */
export async function startBrowser(asked?: string, starting: Starting = {}): Promise<Browser> {
  const { isWatched = false, signal } = starting
  // What starts it is loaded while it is looked for.
  const [path] = await Promise.all([findBrowser(asked), import('puppeteer-core')])
  const start = (): Promise<Browser> => hearing(path, () => launched(path, starting))
  try {
    const browser = await start().catch((error: unknown) =>
      isLate(error) || signal?.aborted ? Promise.reject(error) : start(),
    )
    fresh.add(browser)
    if (!isWatched) starters.set(browser, () => startBrowser(path))
    return browser
  } catch (error) {
    throw new NoBrowserError(
      isLate(error)
        ? `The browser \`${path}\` did not answer within ${timeLimit / 1000} s`
        : `The browser \`${path}\` does not start: ${firstLine(error)}`,
      'Start it by hand to see what is wrong, or name another one in FOLDLORE_BROWSER',
    )
  }
}

/** A browser that is starting, or up. */
export interface BrowserUnderWay {
  readonly browser: Promise<Browser>
  /** Ends it, whichever it is. One that is starting may still be ending afterwards. */
  stop(): Promise<void>
}

/**
 * Starts a browser, and comes back as soon as its program runs: it gets ready while the caller works on, even if that
 * never pauses.
 *
 * @returns the browser, which fails as `startBrowser` does.
 */
export async function browserUnderWay(asked?: string): Promise<BrowserUnderWay> {
  const ending = new AbortController()
  const browser = startBrowser(asked, { signal: ending.signal })
  await new Promise<void>((done) => {
    const goOn = (): void => {
      unsubscribe('child_process', goOn)
      done()
    }
    // Told just before a program is started, which then happens before anything that waits here.
    subscribe('child_process', goOn)
    browser.then(goOn, goOn)
  })
  let isUp = false
  browser.then(
    () => {
      isUp = true
    },
    () => {},
  )
  return {
    browser,
    stop: async () => {
      if (!isUp) ending.abort()
      await browser.then(stopBrowser).catch(() => {})
    },
  }
}

/** Whether the time was up. */
export const isLate = (error: unknown): boolean =>
  error instanceof Error && /\btimed out\b|\btimeout\b/i.test(error.message)

/** Starts a program through puppeteer, which does not listen when it cannot be run at all: that would end this program. */
function hearing<T>(path: string, start: () => Promise<T>): Promise<T> {
  return new Promise((done, fail) => {
    const hear = (error: NodeJS.ErrnoException): void => {
      if (error.path !== path || !error.syscall?.startsWith('spawn')) throw error
      fail(new Error(cannotRun[error.code ?? ''] ?? error.message))
    }
    process.on('uncaughtException', hear)
    start()
      .then(done, fail)
      .finally(() => process.off('uncaughtException', hear))
  })
}

const cannotRun: Readonly<Record<string, string>> = {
  EACCES: 'it is no program that you may run',
  ENOENT: 'what it is run with is not there',
}

async function launched(path: string, { isWatched = false, signal }: Starting): Promise<Browser> {
  const { default: puppeteer } = await import('puppeteer-core')
  // Chromium refuses its sandbox to root, and only to root.
  const root = process.getuid?.() === 0
  return puppeteer.launch({
    executablePath: path,
    headless: 'shell',
    pipe: true,
    args: [...switches, ...(root ? ['--no-sandbox'] : [])],
    handleSIGINT: !isWatched,
    handleSIGTERM: !isWatched,
    handleSIGHUP: !isWatched,
    timeout: timeLimit,
    protocolTimeout: timeLimit,
    ...(signal && { signal }),
  })
}

const starters = new WeakMap<Browser, () => Promise<Browser>>()

/** What starts another browser like this one; undefined when somebody else sees to it. */
export const starterOf = (browser: Browser): (() => Promise<Browser>) | undefined => starters.get(browser)

/** Browsers whose first page nobody has used yet. */
const fresh = new WeakSet<Browser>()

/** A blank page: the one that the browser started with, or a new one. */
export async function openPage(browser: Browser): Promise<Page> {
  const [first] = fresh.delete(browser) ? await browser.pages() : []
  return first ?? browser.newPage()
}

/** Ends a browser at once: it has nothing to keep, and leave-taking would take as long as printing. */
export async function stopBrowser(browser: Browser): Promise<void> {
  const child = browser.process()
  if (process.platform === 'win32' || !child?.pid) return browser.close()
  // One that has ended, or was ended by another, says so no more.
  const gone = child.exitCode === null && child.signalCode === null ? once(child, 'exit') : undefined
  try {
    // With all its helpers: puppeteer makes it the head of a group of its own.
    process.kill(-child.pid, 'SIGKILL')
  } catch {
    // None of them is left.
  }
  await gone
}

const firstLine = (error: unknown): string =>
  String(error instanceof Error ? error.message : error)
    .trim()
    .split('\n')[0] ?? ''
