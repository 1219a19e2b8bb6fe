import { readFileSync } from 'node:fs'
import { beforeAll, describe, expect, test } from 'vitest'
import { figuresOf } from '../../../src/publish/figures-of.ts'
import { handoutHtml } from '../../../src/publish/html.ts'
import { imposePdf } from '../../../src/publish/impose/impose.ts'
import { printHandout } from '../../../src/publish/pdf.ts'
import { loadTheme } from '../../../src/publish/theme.ts'
import { handoutView } from '../../../src/publish/view.ts'
import { isOurs } from '../../../src/publish/write.ts'
import { filled } from '../lesson.ts'
import { openPdf, pageSizes, tags } from '../pdf-reading.ts'
import { withBrowser } from '../with-browser.ts'

const browser = withBrowser()
type Pdf = Awaited<ReturnType<typeof openPdf>>

/** Which page of the lesson stands on each half of a sheet, read off its foot; null where nothing stands. */
async function halves(pdf: Pdf, sheet: number): Promise<(number | null)[]> {
  const page = await pdf.getPage(sheet)
  const [, , width = 0] = page.view
  const { items } = await page.getTextContent()
  return [0, 1].map((half) => {
    const there = items.flatMap((item) =>
      'str' in item && Math.floor((2 * item.transform[4]) / width) === half ? [item.str] : [],
    )
    const found = /page\s+(\d+)\s+of/.exec(there.join(' ').replace(/\s+/g, ' '))
    return found ? Number(found[1]) : null
  })
}

describe('a handout of half pages', () => {
  let single: Uint8Array
  let count: number
  beforeAll(async () => {
    const lesson = filled(
      readFileSync(new URL('../../../lessons/harbour-lights.md', import.meta.url), 'utf8'),
    )
    const theme = await loadTheme('booklet')
    const { view } = handoutView(lesson, figuresOf(lesson), new Map(), undefined, theme.print.rooms)
    const print = await printHandout(await handoutHtml(view, theme, { paper: 'a4', half: true }), browser())
    single = print.pdf
    count = print.pages
  })

  test('as a booklet: each side has the pages that a saddle stitcher wants there', async () => {
    const pdf = await openPdf(await imposePdf(single, 'booklet'))
    const padded = Math.ceil(count / 4) * 4
    expect(count).toBeGreaterThan(4)
    expect(pdf.numPages).toBe(padded / 2)
    const shown = (page: number) => (page <= count ? page : null)
    for (let side = 1; side <= pdf.numPages; side++) {
      const pair = [shown(padded - side + 1), shown(side)]
      expect([side, await halves(pdf, side)]).toEqual([side, side % 2 === 1 ? pair : pair.reverse()])
    }
    for (const [width, height] of await pageSizes(pdf)) {
      expect(Math.abs(width - (297 / 25.4) * 72)).toBeLessThan(1.5)
      expect(Math.abs(height - (210 / 25.4) * 72)).toBeLessThan(1.5)
    }
    expect(await pdf.getViewerPreferences()).toMatchObject({ Duplex: 'DuplexFlipShortEdge' })
  })

  test('in pairs: pages stand beside each other as they are read', async () => {
    const pdf = await openPdf(await imposePdf(single, 'pairs'))
    const read = []
    for (let sheet = 1; sheet <= pdf.numPages; sheet++) read.push(...(await halves(pdf, sheet)))
    expect(read.slice(0, count)).toEqual(Array.from({ length: count }, (_, i) => i + 1))
  })

  test.each(['pairs', 'booklet'] as const)('%s: tags, title, language and outline stay', async (how) => {
    const data = await imposePdf(single, how)
    expect(isOurs(data)).toBe(true)
    const [before, after] = [await openPdf(single), await openPdf(data)]
    // What stands on two pages is told with both of them, and their order is that of the sheets.
    const kinds = async (pdf: Pdf) =>
      [...new Set((await tags(pdf)).map(({ role, alt = '' }) => `${role} ${alt}`))].sort()
    const kept = await kinds(after)
    expect(kept).toEqual(await kinds(before))
    expect(kept.filter((tag) => tag.startsWith('Figure')).length).toBeGreaterThan(6)
    const about = async (pdf: Pdf) => {
      const { Title, Language, Creator } = (await pdf.getMetadata()).info as Record<string, unknown>
      return { Title, Language, Creator }
    }
    expect(await about(after)).toEqual({ Title: 'Harbour lights', Language: 'en', Creator: 'foldlore' })
    expect(await after.getMarkInfo()).toMatchObject({ Marked: true })
    const titles = (outline: Awaited<ReturnType<Pdf['getOutline']>>): string[] =>
      outline.flatMap((item) => [item.title, ...titles(item.items)])
    expect(titles(await after.getOutline())).toEqual(titles(await before.getOutline()))
  })

  test('a line of the outline leads to where its heading stands', async () => {
    const pdf = await openPdf(await imposePdf(single, 'booklet'))
    const items = (await pdf.getOutline()).flatMap((item) => item.items)
    expect(items.length).toBeGreaterThan(3)
    for (const { title, dest } of items) {
      const [ref, , x, y] = dest as [{ num: number; gen: number }, unknown, number, number]
      const page = await pdf.getPage((await pdf.getPageIndex(ref)) + 1)
      const { items: texts } = await page.getTextContent()
      const [word = ''] = title.split('\u00a0')
      const near = texts.filter(
        (text) =>
          'str' in text &&
          text.str.includes(word) &&
          Math.abs(text.transform[4] - x) < 3 &&
          y - text.transform[5] > 0 &&
          y - text.transform[5] < 25,
      )
      expect([title, near.length > 0]).toEqual([title, true])
    }
  })
})
