import process from 'node:process'
import type { Browser } from 'puppeteer'
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
 * @throws NoBrowserError when there is none, or it does not start.
 */
export async function startBrowser(asked?: string): Promise<Browser> {
  const [path, { default: puppeteer }] = await Promise.all([findBrowser(asked), import('puppeteer')])
  // Chromium refuses its sandbox to root, and only to root.
  const root = process.getuid?.() === 0
  try {
    return await puppeteer.launch({
      executablePath: path,
      headless: 'shell',
      pipe: true,
      args: [...switches, ...(root ? ['--no-sandbox'] : [])],
      timeout: timeLimit,
      protocolTimeout: timeLimit,
    })
  } catch (error) {
    throw new NoBrowserError(
      `The browser \`${path}\` does not start: ${firstLine(error)}`,
      'Start it by hand to see what is wrong, or name another one in FOLDLORE_BROWSER',
    )
  }
}

const firstLine = (error: unknown): string =>
  String(error instanceof Error ? error.message : error)
    .trim()
    .split('\n')[0] ?? ''
