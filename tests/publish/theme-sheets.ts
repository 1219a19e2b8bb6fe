import { readdirSync, readFileSync } from 'node:fs'
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { makeHandout, printMade } from '../../src/publish/handout.ts'
import { startBrowser, stopBrowser } from '../../src/publish/launch.ts'
import { disk } from '../../src/publish/outside.ts'
import type { Paper } from '../../src/publish/page-css.ts'
import { learnAll } from '../../src/wording/languages.ts'

/**
 * Prints two lessons in every theme and language, and puts the pages of each print beside each other on a picture: to be
 * looked at. `npm run themes -- large-print` takes that theme alone.
 */
const out = 'out/themes'
const [only] = process.argv.slice(2)
const themes = readdirSync('themes').filter((name) => only === undefined || name === only)
if (themes.length === 0) throw new Error(`There is no theme \`${only}\``)
const lessons = ['harbour-lights', 'low-tide-z-card'].map((name) => `${name}.md`)
const others = ['deutsch', 'francais', 'espanol'].flatMap((folder) =>
  readdirSync(join('lessons', folder)).map((name) => join(folder, name)),
)

interface Print {
  readonly path: string
  readonly text: string
  readonly paper: Paper
}

/** Each lesson in its language; the English ones also as they are spelt, and on the paper that is used, in the US. */
const prints = [...lessons, ...others].flatMap((path): Print[] => {
  const text = readFileSync(join('lessons', path), 'utf8')
  const american = text.replace(/^---\n/, '---\nlang: en-US\n')
  return [
    { path, text, paper: 'a4' },
    ...(lessons.includes(path) ? [{ path, text: american, paper: 'letter' as const }] : []),
  ]
})

/** Pages as large as on a screen that shows one of them whole. */
const dpi = 96
const style = `body{margin:0;padding:16px;background:#8b949a;display:flex;flex-wrap:wrap;align-items:flex-start;gap:16px;width:fit-content;max-width:${3 * (dpi * 8.3 + 16)}px}
canvas{background:#fff}`

/** Lets pdf.js draw in this page. */
async function preparePage(page: Page): Promise<void> {
  await page.setContent(`<style>${style}</style><body></body>`)
  for (const name of ['pdf.worker.min.mjs', 'pdf.min.mjs']) {
    const content = readFileSync(new URL(import.meta.resolve(`pdfjs-dist/build/${name}`)), 'utf8')
    await page.addScriptTag({ content, type: 'module' })
  }
  await page.waitForFunction('globalThis.pdfjsLib && globalThis.pdfjsWorker')
}

/** Draws all pages of a PDF, and photographs them. */
async function photograph(page: Page, pdf: Uint8Array): Promise<Uint8Array> {
  await page.evaluate(`(async () => {
    document.body.replaceChildren()
    const data = Uint8Array.from(atob('${Buffer.from(pdf).toString('base64')}'), (c) => c.charCodeAt(0))
    const file = await pdfjsLib.getDocument({ data }).promise
    for (let i = 1; i <= file.numPages; i++) {
      const page = await file.getPage(i)
      const viewport = page.getViewport({ scale: ${dpi / 72} })
      const canvas = document.createElement('canvas')
      canvas.width = Math.ceil(viewport.width)
      canvas.height = Math.ceil(viewport.height)
      document.body.append(canvas)
      await page.render({ canvas, viewport }).promise
    }
  })()`)
  const body = await page.$('body')
  if (!body) throw new Error('There is no page to photograph')
  return body.screenshot()
}

learnAll()
await mkdir(out, { recursive: true })
const browser = await startBrowser()
try {
  const tab = await browser.newPage()
  await tab.setViewport({ width: Math.ceil(3 * (dpi * 8.3 + 16)) + 32, height: 1200 })
  await preparePage(tab)
  for (const theme of themes)
    for (const { path, text, paper } of prints) {
      const lesson = fillLesson(readLesson(text))
      const { page, findings } = await makeHandout(lesson, { paper, theme, folder: 'lessons' }, disk)
      for (const { message } of findings) process.stdout.write(`${theme}, ${path}: ${message}\n`)
      if (!page) continue
      const { pdf } = await printMade(page, browser)
      const name = `${theme}-${lesson.wording.locale}-${path.replace(/^.*\/|\.md$/g, '')}.png`
      await writeFile(join(out, name), await photograph(tab, pdf))
    }
} finally {
  await stopBrowser(browser)
}
process.stdout.write(
  `Wrote two lessons in ${themes.length} themes and four languages, English as in both countries, to ${out}\n`,
)
