import { expect, test } from 'vitest'
import { handoutHtml } from '../../src/publish/html.ts'
import { layoutOf } from '../../src/publish/layout.ts'
import { printHandout, printPdf } from '../../src/publish/pdf.ts'
import { flaws } from '../../src/publish/setting.ts'
import { openPdf } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()

/** Pages of A4 without margins; blocks of some height in mm, of which `tight` and `apart` make something else. */
const pageOf = (css: string, ...heights: number[]) =>
  handoutHtml(
    { title: 'A', lang: 'en', foot: { title: 'A', print: 'B' } },
    {
      css: `@page{margin:0} body{margin:0} p{margin:0;height:0} ${css}`,
      body: () =>
        heights.map((height, i) => `<p style="height:${height}mm">x</p><div id="end-${i}"></div>`).join(''),
    },
    { paper: 'a4' },
  )
const print = async (css: string, ...heights: number[]) => {
  const { pdf, pages, setting } = await printHandout(await pageOf(css, ...heights), browser())
  return { pages, setting, counted: (await openPdf(pdf)).numPages }
}

test('pages, and where things end on them, are read off the PDF', async () => {
  const pdf = await printPdf(await pageOf('', 200, 90, 100), browser())
  const { pages, lastFill, gaps } = layoutOf(pdf)
  expect(pages).toBe((await openPdf(pdf)).numPages)
  expect(pages).toBe(2)
  // 390 mm of text: 93 mm of them on the second page of 297 mm; the second block ends 7 mm above the foot of the first.
  expect(lastFill).toBeCloseTo(93 / 297, 1)
  expect(gaps).toHaveLength(1)
  expect(gaps[0]).toBeCloseTo(7 / 297, 1)
})

test('a page that ends early is a flaw, and so is a last page with next to nothing on it', () => {
  expect(flaws({ pages: 1, lastFill: 0.1, gaps: [] })).toBe(0)
  expect(flaws({ pages: 3, lastFill: 0.6, gaps: [0.1, 0.05] })).toBe(0)
  expect(flaws({ pages: 3, lastFill: 0.1, gaps: [0.1, 0.05] })).toBeGreaterThan(
    flaws({ pages: 3, lastFill: 0.3, gaps: [] }),
  )
  expect(flaws({ pages: 3, lastFill: 0.6, gaps: [0.4] })).toBeGreaterThan(
    flaws({ pages: 3, lastFill: 0.6, gaps: [0.3] }),
  )
})

test('a last page with next to nothing on it is saved by the tighter setting', async () => {
  expect(await print('.tight p{zoom:.8}', 200, 110)).toEqual({ pages: 1, setting: 'tight', counted: 1 })
})

test('when that does not save it, the last stage gets a page of its own', async () => {
  const css = 'p{break-inside:avoid} .apart p:nth-of-type(2){break-before:page}'
  expect(await print(css, 150, 140, 40)).toEqual({ pages: 2, setting: 'apart', counted: 2 })
})

test('a last page that is well filled stays as it is', async () => {
  expect(await print('.tight p{zoom:.5}', 200, 90, 200)).toEqual({ pages: 2, setting: undefined, counted: 2 })
})

test('settings that do not help are not taken', async () => {
  expect(await print('', 200, 90, 50)).toEqual({ pages: 2, setting: undefined, counted: 2 })
})

test('a page that would end early is filled by the tighter setting, where that helps', async () => {
  const css = 'p{break-inside:avoid} .tight p{zoom:.9}'
  expect(await print(css, 120, 80, 110, 150)).toEqual({ pages: 2, setting: 'tight', counted: 2 })
})
