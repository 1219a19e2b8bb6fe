import { once } from 'node:events'
import process from 'node:process'
import type { Browser, Page } from 'puppeteer-core'
import { findBrowser } from './browser.ts'
import { NoBrowserError } from './problems.ts'

/** How long a browser may take to start, and to do any one thing, in ms. */
export const timeLimit = 30_000

/** Names lead nowhere, whatever a page asks for; a page is drawn the same with and without a screen. */
const switches = ['--host-resolver-rules=MAP * ~NOTFOUND', '--font-render-hinting=none', '--disable-gpu']

/**
 * Starts a browser without a window, that reaches no network. Close it when done.
 *
 * @param asked path of a browser; else one is found.
 * @param quitsOnSignals whether Ctrl-C ends the program, browser and all; without it, whoever started it sees to that.
 * @throws NoBrowserError when there is none, or it does not start.
 */
export async function startBrowser(asked?: string, { quitsOnSignals = true } = {}): Promise<Browser> {
  const [path, { default: puppeteer }] = await Promise.all([findBrowser(asked), import('puppeteer-core')])
  // Chromium refuses its sandbox to root, and only to root.
  const root = process.getuid?.() === 0
  try {
    const browser = await puppeteer.launch({
      executablePath: path,
      headless: 'shell',
      pipe: true,
      args: [...switches, ...(root ? ['--no-sandbox'] : [])],
      handleSIGINT: quitsOnSignals,
      handleSIGTERM: quitsOnSignals,
      handleSIGHUP: quitsOnSignals,
      timeout: timeLimit,
      protocolTimeout: timeLimit,
    })
    fresh.add(browser)
    return browser
  } catch (error) {
    throw new NoBrowserError(
      `The browser \`${path}\` does not start: ${firstLine(error)}`,
      'Start it by hand to see what is wrong, or name another one in FOLDLORE_BROWSER',
    )
  }
}

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
