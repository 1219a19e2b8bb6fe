import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import type { Browser, Page } from 'puppeteer-core'
import { afterAll, beforeAll } from 'vitest'
import { disk } from '../../../src/publish/outside.ts'
import { screenHtml } from '../../../src/publish/screen/screen.ts'
import { filled } from '../lesson.ts'

/** The program of the page, made as `npm run build` makes it. */
async function pageProgram(): Promise<string> {
  const { screenPage } = await import(String(new URL('../../../.ci/screen-page.js', import.meta.url)))
  const { outputFiles } = await build({ ...screenPage, outdir: 'out', write: false })
  return outputFiles?.[0]?.text ?? ''
}

/** Writes pages into a folder of their own, from which a browser opens them. */
export function withScreenPages() {
  const folder = mkdtempSync(join(tmpdir(), 'screen-'))
  let script = ''
  let count = 0
  beforeAll(async () => {
    script = await pageProgram()
  })
  afterAll(() => rmSync(folder, { recursive: true }))
  const made = new Map<string, Promise<string>>()
  const make = async (text: string): Promise<string> => {
    const page = await screenHtml(filled(text), { paper: 'a4', theme: 'step-sheet', folder, script }, disk)
    return page.html ?? ''
  }
  const html = (text: string): Promise<string> => {
    const page = made.get(text) ?? make(text)
    made.set(text, page)
    return page
  }
  return {
    html,
    async url(text: string): Promise<string> {
      const path = join(folder, `page-${count++}.html`)
      writeFileSync(path, await html(text))
      return String(pathToFileURL(path))
    },
  }
}

/** A page that is open, with a clock that goes on only when it is told to. */
export interface Opened {
  readonly page: Page
  /** The clock goes on by so many seconds, and the page has seen it. */
  readonly goOn: (seconds: number) => Promise<void>
  readonly ask: (expression: string) => Promise<unknown>
  readonly textOf: (selector: string) => Promise<string>
  /** The id of the slide that is seen; more than one where there are more. */
  readonly shown: () => Promise<string>
  /** Addresses of all that was asked for from elsewhere. */
  readonly asked: string[]
}

export async function openScreen(
  browser: Browser,
  url: string,
  { width = 1280, height = 720, scheme = 'light' as 'light' | 'dark' } = {},
): Promise<Opened> {
  const page = await browser.newPage()
  await page.setViewport({ width, height, hasTouch: true })
  // Colours and places are measured when a slide has come: it comes at once.
  await page.emulateMediaFeatures([
    { name: 'prefers-reduced-motion', value: 'reduce' },
    { name: 'prefers-color-scheme', value: scheme },
  ])
  const asked: string[] = []
  page.on('request', (request) => {
    if (!/^(file|data):/.test(request.url())) asked.push(request.url())
  })
  await page.evaluateOnNewDocument(`{
    const start = Number(sessionStorage.getItem('test clock') ?? 1_800_000_000_000)
    window.testClock = start
    Date.now = () => window.testClock
  }`)
  await page.goto(url)
  await page.waitForSelector('[data-screen=on]')
  const ask = (expression: string): Promise<unknown> => page.evaluate(expression)
  return {
    page,
    ask,
    asked,
    async goOn(seconds) {
      await ask(`testClock += ${seconds * 1000}; sessionStorage.setItem('test clock', testClock)`)
      // A little longer than it takes to be called again.
      await new Promise((resolve) => setTimeout(resolve, 400))
    },
    textOf: async (selector) =>
      String(await ask(`document.querySelector(${JSON.stringify(selector)}).innerText`)).replaceAll(
        '\u00a0',
        ' ',
      ),
    shown: async () =>
      String(
        await ask(
          "[...document.querySelectorAll('.slide')].filter((e) => e.checkVisibility()).map((e) => e.id).join()",
        ),
      ),
  }
}
