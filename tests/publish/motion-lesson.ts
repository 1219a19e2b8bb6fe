import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import type { Browser, Page } from 'puppeteer-core'
import { afterAll, beforeAll } from 'vitest'
import { motionHtml } from '../../src/publish/motion/motion.ts'
import { filled } from './lesson.ts'
import type { View } from './motion-sight.ts'

export const lessonText = (name: string): string =>
  readFileSync(new URL(`../../lessons/${name}.md`, import.meta.url), 'utf8')

/** The program of the page, made as `npm run build` makes it. */
export async function pageProgram(): Promise<string> {
  const { motionPage } = await import(String(new URL('../../.ci/motion-page.js', import.meta.url)))
  const { outputFiles } = await build({ ...motionPage, outdir: 'out', write: false })
  return outputFiles?.[0]?.text ?? ''
}

/** Writes pages into a folder of their own, from which a browser opens them. */
export function withMotionPages(): {
  html: (text: string) => Promise<string>
  url: (text: string) => Promise<string>
} {
  const folder = mkdtempSync(join(tmpdir(), 'motion-'))
  let program = ''
  let count = 0
  beforeAll(async () => {
    program = await pageProgram()
  })
  afterAll(() => rmSync(folder, { recursive: true }))
  const made = new Map<string, Promise<string>>()
  const html = (text: string): Promise<string> => {
    const page = made.get(text) ?? motionHtml(filled(text), 'a4', 'step-sheet', program)
    made.set(text, page)
    return page
  }
  return {
    html,
    async url(text) {
      const path = join(folder, `page-${count++}.html`)
      writeFileSync(path, await html(text))
      return String(pathToFileURL(path))
    },
  }
}

/** A page that is open, with its card drawn. */
export async function openMotion(
  browser: Browser,
  url: string,
  { width = 900, height = 760, ratio = 1 } = {},
): Promise<Page> {
  const page = await browser.newPage()
  await page.setViewport({ width, height, deviceScaleFactor: ratio })
  await page.goto(url)
  await page.waitForSelector('[data-motion="moves"] #stage[data-view]')
  return page
}

/** Moves the slider, and gives how the picture is looked at then. */
export async function viewAt(page: Page, percent: number): Promise<View> {
  await page.evaluate(`(() => {
    const slider = document.querySelector('#slider')
    slider.value = ${percent}
    slider.dispatchEvent(new Event('input'))
  })()`)
  await page.waitForFunction(
    `document.querySelector('#stage').dataset.moment === '${(percent / 100).toFixed(4)}'`,
  )
  return viewOf(page)
}

/** How the picture is looked at. */
export async function viewOf(page: Page): Promise<View> {
  const told = (await page.evaluate(`(() => {
    const stage = document.querySelector('#stage')
    return [...stage.dataset.view.split(' ').map(Number), stage.clientWidth, stage.clientHeight]
  })()`)) as number[]
  const [turn = 0, rise = 0, scale = 0, x = 0, y = 0, z = 0, width = 0, height = 0] = told
  return { turn, rise, scale, middle: [x, y, z], width, height }
}
