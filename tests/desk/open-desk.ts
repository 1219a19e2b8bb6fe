import { rmSync } from 'node:fs'
import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import process from 'node:process'
import { pathToFileURL } from 'node:url'
import puppeteer, { type Browser, type Page } from 'puppeteer-core'
import { afterAll } from 'vitest'
import { buildDesk } from '../../.ci/desk-page.js'
import { findBrowser } from '../../src/publish/browser.ts'

let built: Promise<string> | undefined
/** The page as one file, built once for all tests of a process. */
export const deskFile = (): Promise<string> => {
  built ??= mkdtemp(join(tmpdir(), 'desk-page-')).then(async (folder) => {
    process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
    const path = join(folder, 'desk.html')
    await buildDesk(path, { minify: false })
    return path
  })
  return built
}

/** The page's own address without a server. */
export const deskAddress = async (): Promise<string> => pathToFileURL(await deskFile()).href

/** How a browser for these tests is started. */
export interface BrowserWish {
  /** A folder that keeps what the browser keeps, for a browser that is started again. */
  readonly profile?: string
}

/** A browser as a teacher has it: scripts run, and the local server can be reached. */
export async function startDeskBrowser({ profile }: BrowserWish = {}): Promise<Browser> {
  return puppeteer.launch({
    executablePath: await findBrowser(),
    headless: true,
    args: [...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), '--font-render-hinting=none'],
    ...(profile && { userDataDir: profile }),
  })
}

/** What the page says when something in it goes wrong; empty when nothing does. */
const troubles = new WeakMap<Page, string[]>()
export const troubleOf = (page: Page): readonly string[] => troubles.get(page) ?? []

/**
 * The page, opened in a tab of its own.
 *
 * @param address of a local server; the file itself without it.
 */
export async function openDesk(
  browser: Browser,
  { address, width = 1400, height = 900 }: { address?: string; width?: number; height?: number } = {},
): Promise<Page> {
  const page = await browser.newPage()
  const told: string[] = []
  troubles.set(page, told)
  page.on('pageerror', (error) =>
    told.push(error instanceof Error ? (error.stack ?? error.message) : String(error)),
  )
  page.on('console', (message) => {
    if (message.type() === 'error') told.push(message.text())
  })
  await page.setViewport({ width, height })
  page.setDefaultTimeout(100_000)
  await page.goto(address ?? (await deskAddress()), { waitUntil: 'load', timeout: 100_000 })
  await page.waitForSelector('#desk > *')
  return page
}

/** One browser for the tests of a file, stopped behind them. */
export function useDeskBrowser(): () => Promise<Browser> {
  let running: Promise<Browser> | undefined
  afterAll(async () => {
    await (await running)?.close()
  })
  return () => {
    running ??= startDeskBrowser()
    return running
  }
}
