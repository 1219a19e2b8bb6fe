import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import process from 'node:process'
import { brotliDecompressSync } from 'node:zlib'
import puppeteer, { type Browser } from 'puppeteer-core'
import { afterAll, beforeAll } from 'vitest'
import { findBrowser } from '../../src/publish/browser.ts'
import { packagedBrowser } from '../../src/publish/packaged-browser.ts'

const launch = (path: string, args: readonly string[]): Promise<Browser> =>
  puppeteer.launch({
    executablePath: path,
    headless: 'shell',
    pipe: true,
    args: ['--font-render-hinting=none', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), ...args],
  })

const inSoftware = ['--use-angle=swiftshader', '--enable-unsafe-swiftshader']

async function hasWebgl(browser: Browser): Promise<boolean> {
  const page = await browser.newPage()
  const has = await page.evaluate("document.createElement('canvas').getContext('webgl2') !== null")
  await page.close()
  return has === true
}

/** The packaged browser comes with a renderer that it is run without elsewhere: here it lies beside it. */
async function packagedWithRenderer(folder: string): Promise<string | undefined> {
  const path = await packagedBrowser()
  if (!path) return undefined
  const root = dirname(dirname(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium'))))
  const packed = readFileSync(join(root, 'bin', 'swiftshader.tar.br'))
  writeFileSync(join(folder, 'renderer.tar'), brotliDecompressSync(packed))
  spawnSync('tar', ['xf', 'renderer.tar'], { cwd: folder })
  copyFileSync(path, join(folder, 'chromium'))
  return join(folder, 'chromium')
}

/** What is said where it cannot be tested. */
export const noWebgl = 'NO WEBGL: no browser here draws in space, so the fold in motion is NOT tested'

export interface SpaceBrowser {
  readonly browser: Browser
  /** Whether it draws in space. Where it does not, a test says so and is skipped. */
  readonly draws: boolean
}

/** One browser that draws in space for all tests of a file: the one that prints, or the packaged one with its renderer. */
export function withSpaceBrowser(): () => SpaceBrowser {
  const folder = mkdtempSync(join(tmpdir(), 'motion-browser-'))
  let found: SpaceBrowser
  beforeAll(async () => {
    let browser = await launch(await findBrowser(), inSoftware)
    let draws = await hasWebgl(browser)
    const other = draws ? undefined : await packagedWithRenderer(folder)
    if (other) {
      await browser.close()
      browser = await launch(other, inSoftware)
      draws = await hasWebgl(browser)
    }
    if (!draws) console.warn(noWebgl)
    found = { browser, draws }
  })
  afterAll(async () => {
    await found.browser.close()
    rmSync(folder, { recursive: true })
  })
  return () => found
}

/** One that cannot draw in space. */
export function withFlatBrowser(): () => Browser {
  let browser: Browser
  beforeAll(async () => {
    browser = await launch(await findBrowser(), ['--disable-3d-apis'])
  })
  afterAll(() => browser.close())
  return () => browser
}
