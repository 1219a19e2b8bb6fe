import type { Browser } from 'puppeteer-core'
import { afterAll, beforeAll } from 'vitest'
import { startBrowser } from '../../src/publish/launch.ts'

/** One browser for all tests of a file. */
export function withBrowser(): () => Browser {
  let browser: Browser
  beforeAll(async () => {
    browser = await startBrowser()
  })
  afterAll(() => browser.close())
  return () => browser
}
