import { describe, expect, test } from 'vitest'
import { mm } from '../../src/length/length.ts'
import { labelsHtml } from '../../src/publish/kit-labels.ts'
import { printPdf } from '../../src/publish/pdf.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { openPdf, pageSizes, pageTexts } from './pdf-reading.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const about = { title: 'Saturday', wording: wordingOf('en', 'in') }
const label = (i: number, contents: readonly string[] = ['1 base', '2 side strips']) => ({
  name: `kit ${i}`,
  title: 'Harbour lights',
  chosen: i % 2 ? ['blue card'] : [],
  contents,
})
const some = (n: number) => Array.from({ length: n }, (_, i) => label(i + 1))
const sheet = { columns: 3, rows: 7, left: mm(7), top: mm(15), across: mm(2), down: mm(0) }

describe.each(['a4', 'letter'] as const)('on %s', (paper) => {
  test('labels fill their sheets row by row, and every name is printed', async () => {
    const html = await labelsHtml(about, some(25), sheet, paper, 'step-sheet')
    const pdf = await openPdf(await printPdf(html, browser()))
    expect(pdf.numPages).toBe(2)
    const [width] = (await pageSizes(pdf))[0] ?? [0]
    expect(width).toBeCloseTo(paper === 'a4' ? 595.3 : 612, 0)
    const texts = (await pageTexts(pdf)).map((text) => text.match(/kit \d+/g))
    expect(texts).toEqual([
      Array.from({ length: 21 }, (_, i) => `kit ${i + 1}`),
      ['kit 22', 'kit 23', 'kit 24', 'kit 25'],
    ])
  })

  test('a browser puts each label where the sheet has one', async () => {
    const page = await browser().newPage()
    await page.setContent(await labelsHtml(about, some(21), sheet, paper, 'step-sheet'))
    const boxes = await page.$$eval('.kit-label', (all) =>
      all.map((one) => {
        const page = one.parentElement?.getBoundingClientRect()
        const { left, top, width, height } = one.getBoundingClientRect()
        return [left - (page?.left ?? 0), top - (page?.top ?? 0), width, height].map((px) => (px / 96) * 25.4)
      }),
    )
    const inside = await page.$$eval('.kit-label', (all) =>
      all.every((one) => one.scrollHeight <= one.clientHeight + 1),
    )
    await page.close()
    // Worked by hand: (210 - 2·7 - 2·2) / 3 = 64 and (297 - 2·15) / 7; 215.9 × 279.4 mm for Letter.
    const [w, h] = paper === 'a4' ? [64, 267 / 7] : [(215.9 - 18) / 3, (279.4 - 30) / 7]
    for (const [i, box] of boxes.entries()) {
      const wanted = [7 + (i % 3) * (w + 2), 15 + Math.floor(i / 3) * h, w, h]
      for (const [k, found] of box.entries()) expect(Math.abs(found - (wanted[k] ?? 0))).toBeLessThan(0.1)
    }
    expect(inside).toBe(true)
  })
})

test('a label has the colours of the workshop, and neither its logo nor its footer', async () => {
  const brand = {
    second: { onPaper: '#226644', onDark: '#88ccaa' },
    logo: { data: 'data:image/png;base64,', alternative: 'A gull' },
    footer: 'By the harbour',
  } as const
  const html = await labelsHtml(about, some(1), sheet, 'a4', 'step-sheet', brand)
  expect(html).not.toMatch(/A gull|By the harbour/)
  const page = await browser().newPage()
  await page.setContent(String(html))
  const colour = await page.evaluate(`getComputedStyle(document.querySelector('.kit-label .lesson')).color`)
  await page.close()
  expect(colour).toBe('rgb(34, 102, 68)')
})

test('labels without room are refused, and so are kits that do not go on them', async () => {
  const print = (columns: number, contents?: string[]) =>
    labelsHtml(about, [label(1, contents)], { ...sheet, columns }, 'a4', 'step-sheet')
  expect(await print(12)).toBe('no room')
  expect(
    await print(
      5,
      Array.from({ length: 40 }, (_, i) => `${i} pieces of something`),
    ),
  ).toBe('too small')
})
