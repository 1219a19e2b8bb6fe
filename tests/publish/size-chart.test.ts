import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { unitsOf } from '../../src/lesson/sizes/offered.ts'
import { sizeChartHtml, sizeChartPdf } from '../../src/publish/size-chart.ts'
import { sizeChartView } from '../../src/publish/size-chart-view.ts'
import { loadSizeChartTheme } from '../../src/publish/theme.ts'
import { sizeChart } from '../../src/workshop/size-chart.ts'
import { openPdf, pageSizes, pageTexts, tags } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const folder = new URL('../../lessons/', import.meta.url)
const textOf = (name: string): string => readFileSync(new URL(name, folder), 'utf8')
const theme = loadSizeChartTheme('step-sheet')
const browser = withBrowser()

async function chartOf(text: string, paper: 'a4' | 'letter' = 'a4') {
  const lesson = readLesson(text)
  const own = fillLesson(lesson)
  const view = sizeChartView(sizeChart(lesson, own, unitsOf(own.frontMatter)), own)
  const page = await sizeChartHtml(view, await theme, paper)
  return { page, pdf: async () => openPdf(await sizeChartPdf(view, page, paper, browser())) }
}

/** Whether all text of a PDF stands between its margins of 14 mm. */
async function isWithin(pdf: Awaited<ReturnType<typeof openPdf>>): Promise<boolean> {
  const margin = (14 * 72) / 25.4
  for (let i = 1; i <= pdf.numPages; i++) {
    const page = await pdf.getPage(i)
    const [, , right = 0] = page.view
    for (const item of (await page.getTextContent()).items)
      if ('str' in item && item.str.trim() !== '' && item.transform[4] + item.width > right - margin + 1)
        return false
  }
  return true
}

const lessons = readdirSync(folder).filter((name) => name.endsWith('.md'))
const long = { a4: 841.9, letter: 792 } as const

/** Letter is the lower of the two when it lies: those with the most rows are tried on it too. */
const onBoth = ['harbour-arches.md', 'quay-morning.md', 'tide-box.md']

test.each(lessons)('%s: its chart is one page', { timeout: 60_000 }, async (name) => {
  expect(lessons).toEqual(expect.arrayContaining(onBoth))
  for (const paper of onBoth.includes(name) ? (['a4', 'letter'] as const) : (['a4'] as const)) {
    const pdf = await (await chartOf(textOf(name), paper)).pdf()
    const [size, ...more] = await pageSizes(pdf)
    expect(more).toEqual([])
    expect(size?.[0]).toBeCloseTo(long[paper], 0)
    expect(await isWithin(pdf)).toBe(true)
    const [text = ''] = await pageTexts(pdf)
    const { sizes } = readLesson(textOf(name)).frontMatter
    expect(text).toContain(sizes.at(-1)?.text.replace(' x ', ' × '))
    expect((await tags(pdf)).map(({ role }) => role)).toContain('Table')
    await pdf.destroy()
  }
})

test('one with many sizes and letters takes two pages at most, with its heads on each', {
  timeout: 60_000,
}, async () => {
  const sizes = Array.from({ length: 9 }, (_, i) => `${7 + i / 4} x 5 in`).join(', ')
  const pieces = Array.from({ length: 14 }, (_, i) => `  token ${i}: {size: 1 x ${i + 1}/16 in}`).join('\n')
  const text = textOf('harbour-lights.md')
    .replace(/^sizes:.*$/m, `sizes: [${sizes}]`)
    .replace(/^ {2}lighthouse:.*$/m, (line) => `${line}\n${pieces}`)
  const pdf = await (await chartOf(text)).pdf()
  const pages = await pageTexts(pdf)
  expect(pages).toHaveLength(2)
  expect(await isWithin(pdf)).toBe(true)
  for (const page of pages) expect(page).toMatch(/Inches|Millimetres/)
  await pdf.destroy()
})

test.each([1200, 390])('on a screen %i px wide axe-core finds nothing to complain of', async (width) => {
  const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
  const failing = textOf('harbour-lights.md').replace(/^sizes:.*$/m, 'sizes: [6 x 6 in, 4 x 4 in]')
  for (const text of [textOf('quay-morning.md'), failing]) {
    const page = await browser().newPage()
    await page.setViewport({ width, height: 900 })
    await page.setContent((await chartOf(text)).page)
    await page.evaluate(axe)
    const found = await page.evaluate('axe.run(document, { resultTypes: ["violations"] })')
    await page.close()
    const { violations, passes } = found as {
      violations: { id: string; nodes: { html: string }[] }[]
      passes: unknown[]
    }
    expect(passes.length).toBeGreaterThan(15)
    expect(violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`))).toEqual([])
  }
})

test('every number of the table has a row and a column that name it, and fractions copy as they are read', async () => {
  const page = await browser().newPage()
  await page.setContent((await chartOf(textOf('harbour-lights.md'))).page)
  const table = await page.evaluate(`(() => {
    const table = document.querySelector('table')
    return {
      lang: document.documentElement.lang,
      caption: table.caption.textContent,
      units: [...table.querySelectorAll('th[scope=colgroup]')].map((th) => [th.textContent, th.colSpan]),
      columns: table.querySelectorAll('th[scope=col]').length,
      rows: [...table.tBodies].flatMap((body) => [...body.rows]).map((row) => [
        row.querySelectorAll('th[scope=row]').length, row.cells.length, row.cells[1].textContent.trim(),
      ]),
    }
  })()`)
  await page.close()
  const { rows, ...rest } = table as { rows: [number, number, string][] }
  expect(rest).toEqual({
    lang: 'en',
    caption:
      'Every piece in every size, inches on a ruler of 1/16\u00a0in and millimetres on a ruler of 1\u00a0mm',
    units: [
      ['Inches', 4],
      ['Millimetres', 4],
    ],
    columns: 8,
  })
  for (const [heads, cells] of rows) expect([heads, cells]).toEqual([1, 9])
  expect(rows.map(([, , first]) => first)).toContain('8\u202f1/2\u00a0×\u00a05')
})
